#include "rules/all_rules.h"

namespace toft::rules {

template <>
const std::array<RuleAt<Recording>, rule_count>& rulebook_at<Recording>() {
    return all_rules<Recording>;
}

}  // namespace toft::rules
