#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
# Reads a calendar file by a parser that is not ours and prints what it understood, one JSON object a day. Any complaint ends it.
import json
import sys
from datetime import timedelta


def by_icalendar(content):
    from icalendar import Calendar
    calendar = Calendar.from_ical(content)
    assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
    for event in calendar.walk("VEVENT"):
        assert not event.errors, event.errors
        alarms = event.walk("VALARM")
        assert len(alarms) == 1 and alarms[0]["ACTION"] == "DISPLAY"
        yield {"uid": str(event["UID"]), "on": event["DTSTART"].dt, "end": event["DTEND"].dt, "stamp": event["DTSTAMP"].dt,
               "summary": str(event["SUMMARY"]), "description": str(event.get("DESCRIPTION", "")),
               "trigger": alarms[0]["TRIGGER"].dt}


def by_vobject(content):
    import vobject
    calendar = vobject.readOne(content.decode("utf-8"))
    calendar.validate(raiseException=True)
    for event in calendar.vevent_list:
        event.validate(raiseException=True)
        yield {"uid": event.uid.value, "on": event.dtstart.value, "end": event.dtend.value, "stamp": event.dtstamp.value,
               "summary": event.summary.value,
               "description": event.description.value if "description" in event.contents else "",
               "trigger": event.valarm.trigger.value}


parser, file = sys.argv[1:]
with open(file, "rb") as stream:
    read = stream.read()
for day in {"icalendar": by_icalendar, "vobject": by_vobject}[parser](read):
    assert day["end"] - day["on"] == timedelta(days=1)
    print(json.dumps({"uid": day["uid"], "on": day["on"].isoformat(), "stamp": day["stamp"].strftime("%Y-%m-%dT%H:%M:%SZ"),
                      "summary": day["summary"], "description": day["description"],
                      "hours": day["trigger"].total_seconds() / 3600}))
