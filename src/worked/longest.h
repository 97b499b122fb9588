#pragma once
// How long a run may become before a rule stops being met, all its legs growing alike and
// everything else staying as it is.

#include "worked/worked.h"

#include <string>
#include <utility>
#include <vector>

namespace toft::worked {

/// Metres by rule, for the rules that get worse with length and are met now. A run that may grow
/// beyond 100 times its length is given as that. `setting` is the subject's as things stand.
std::vector<std::pair<std::string, double>> longest_by_rule(const Subject& subject,
                                                            const study::Setting<Silent>& setting,
                                                            const study::RunScheme& scheme);

}  // namespace toft::worked
