#include "codec/prices.h"

#include "codec/scheme.h"

namespace toft::codec {

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
