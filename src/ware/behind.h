#pragma once
// What stands behind the board at a run's end: the runs that start there, spare ways asked for,
// solar and batteries.

#include "ware/list.h"

namespace toft::ware {

/// For the part of that place in the list.
Behind behind(const site::Job& job, const std::vector<RunBill>& parts, std::size_t place);

}  // namespace toft::ware
