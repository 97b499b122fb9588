#include "codec/rules.h"

#include "codec/document.h"
#include "rules/rulebook.h"

namespace toft::codec {

std::string write_rules() {
    Json json{{"format", "toft-rules/1"}, {"edition", rules::edition()}, {"rules", Json::array()}};
    for (const rules::Rule& rule : rules::rulebook()) {
        const rules::RuleInfo& r = *rule.info;
        json["rules"].push_back({{"name", r.name},
                                 {"title", r.title},
                                 {"clause", r.clause},
                                 {"unit", r.unit},
                                 {"counts_as_headroom", r.graded},
                                 {"adds_along_path", r.adds},
                                 {"longer", rules::trend_word(r.longer)},
                                 {"thicker", rules::trend_word(r.thicker)},
                                 {"heavier", rules::trend_word(r.heavier)},
                                 {"larger_device", rules::trend_word(r.larger)},
                                 {"reads", r.reads}});
    }
    return json.dump(2) + "\n";
}

}  // namespace toft::codec
