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

/// All of them.
Changes all_changes(const Ground& ground);

}  // namespace toft::lever
