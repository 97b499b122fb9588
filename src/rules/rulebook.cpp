#include "rules/rulebook.h"

#include "rules/all_rules.h"

namespace toft::rules {

template <>
const std::array<Rule, rule_count>& rulebook_at<Silent>() {
    return all_rules<Silent>;
}

const std::array<Rule, rule_count>& rulebook() { return all_rules<Silent>; }

const Rule* find_rule(const std::string& name) {
    for (const Rule& rule : rulebook()) {
        if (name == rule.info->name) return &rule;
    }
    return nullptr;
}

const char* edition() {
    return "BS 7671:2018 up to Amendment 3:2024. Amendment 4:2026 governs since 15 October 2026; "
           "its "
           "tables were not seen.";
}

}  // namespace toft::rules
