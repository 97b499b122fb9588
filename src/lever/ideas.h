#pragma once
// Every idea there is, by what it changes.

#include "lever/change.h"

namespace toft::lever {

Changes metal_and_reach(const Ground& ground);  ///< pipes that enter, taps within reach
Changes other_route(const Ground& ground);      ///< where the run goes
Changes other_laying(const Ground& ground);     ///< how its legs lie
Changes gentler_start(const Ground& ground);    ///< motors
Changes less_load(const Ground& ground);        ///< what the run is sized for
Changes house_work(const Ground& ground);       ///< bonding, earthing conductor, board
Changes wider_offer(const Ground& ground);      ///< what the wishes and the run leave open
Changes other_earth(const Ground& ground);      ///< electrodes, the operator's terminal

/// All of them, each with the run it is made at.
Changes all_changes(const Ground& ground);

/// Those of every run of a job; those of the house and of the wishes once.
Changes all_changes_of(const tables::Catalogue& catalogue, const site::Job& job);

/// Changes of one kind, each of another place, made together.
Change made_together(const tables::Catalogue& catalogue, const site::Job& job,
                     const std::vector<const Change*>& parts);

}  // namespace toft::lever
