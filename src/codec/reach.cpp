#include "codec/reach.h"

#include "codec/document.h"
#include "codec/scheme.h"

namespace toft::codec {

namespace {

Json row_json(const answer::ReachRow& row) {
    Json cells = Json::array();
    for (const answer::ReachCell& cell : row.cells) {
        cells.push_back({{"longest_m", rounded(cell.metres)},
                         {"ended_by", cell.ended_by.empty() ? Json() : Json(cell.ended_by)}});
    }
    return {{"live_mm2", rounded(row.section_mm2)}, {"by_load", cells}};
}

}  // namespace

std::string write_reach(const answer::ReachAnswer& a) {
    Json tables = Json::array();
    for (const answer::ReachTable& table : a.tables) {
        Json rows = Json::array();
        for (const answer::ReachRow& row : table.rows) rows.push_back(row_json(row));
        tables.push_back({{"family", table.family},
                          {"cores", table.cores},
                          {"protective_conductor", table.protective_conductor},
                          {"rows", rows}});
    }
    const Json json{{"format", "toft-reach/1"}, {"job", a.job},
                    {"supply", a.supply},       {"laid", a.laid},
                    {"phases", a.phases},       {"device", a.device},
                    {"loads_a", a.loads_a},     {"looked_at_up_to_m", rounded(a.longest_m)},
                    {"tables", tables},         {"assumed", a.assumed},
                    {"cautions", a.cautions}};
    return json.dump(2) + "\n";
}

}  // namespace toft::codec
