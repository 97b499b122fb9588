#include "codec/reference.h"

#include "codec/document.h"
#include "codec/scheme.h"
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

std::string write_prices(const std::string& book, const std::vector<price::ListedRow>& rows) {
    Json items = Json::array();
    for (const price::ListedRow& row : rows) {
        const auto sum = [&](double amount) { return row.priced ? Json(rounded(amount)) : Json(); };
        items.push_back({{"item", row.item},
                         {"unit", row.unit},
                         {"low", sum(row.low)},
                         {"net", sum(row.net)},
                         {"high", sum(row.high)},
                         {"use", row.use}});
    }
    const Json json = {{"format", "toft-prices/1"}, {"book", book}, {"items", std::move(items)}};
    return json.dump(2) + "\n";
}

}  // namespace toft::codec
