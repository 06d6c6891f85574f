// SPDX-License-Identifier: MIT
// What the manual shows of the pages; dialogs are in dialog_scene.h.
#pragma once

namespace desktop {

class Album;

void takePages(Album& album);
void takeHeadToHead(Album& album);  // what stands further down on the page, where it is in front
void takeClimate(Album& album);     // since a batch was stuck, where the page is in front
void takeWorth(Album& album);       // what stands further down on the page, where it is in front
void takeLosses(Album& album);      // over all records, where the page is in front
void takeMixes(Album& album);       // every question, where the page is in front
void takeOneBatch(Album& album);
void takeFind(Album& album);
void takeEmptyBench(Album& album);  // closes the logbook for a new one
void takeFirstRun(Album& album);    // closes the logbook

}  // namespace desktop
