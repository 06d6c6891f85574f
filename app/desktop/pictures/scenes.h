// SPDX-License-Identifier: MIT
// What the manual shows: every page, every dialog, and the middle of the work in some of them.
#pragma once

namespace desktop {

class Album;

void takePages(Album& album);
void takeHeadToHead(Album& album);  // what stands further down on the page, where it is in front
void takeOneBatch(Album& album);
void takeDialogs(Album& album);
void takeFirstRun(Album& album);  // closes the logbook

}  // namespace desktop
