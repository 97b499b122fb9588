#pragma once
// Demand of every building, what the intake has left for the run, and what the network operator is
// asked or told. Pages: docs/methods/scenario.md, intake-left.md, notice.md.

#include "answer/answer.h"

namespace toft::answer {

/// What the operator is asked before the work and told after it, for the setting's run.
std::vector<NoticeAnswer> notices_of(const study::Setting<Silent>& setting);

DemandAnswer demand_of(const study::Setting<Silent>& setting);

}  // namespace toft::answer
