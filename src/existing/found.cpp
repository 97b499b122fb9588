#include "existing/found.h"

#include <algorithm>

namespace toft::existing {

namespace {

using study::BuildingEarthing;
using study::RunScheme;
using study::Setting;

/// Whether that row speaks of such a way to build a run.
bool speaks_of(const tables::FoundRow& row, const RunScheme& scheme) {
    const bool own = scheme.earthing == BuildingEarthing::own_electrode;
    const bool earthing =
        row.earthing == "any" || row.earthing == (own ? "own electrode" : "house's earth");
    return earthing &&
           (row.cable == "any" || row.cable == (scheme.first().old() ? "kept" : "anew"));
}

struct Place {
    const std::vector<std::string>& found;
    const char* at;
    std::string where;
};

void take(const std::vector<tables::FoundRow>& rows, const Place& place, const RunScheme& scheme,
          std::vector<FoundWrong>& out) {
    for (const tables::FoundRow& row : rows) {
        if (row.at != place.at || !speaks_of(row, scheme)) continue;
        if (std::find(place.found.begin(), place.found.end(), row.found) == place.found.end()) {
            continue;
        }
        out.push_back({&row, place.where});
    }
}

}  // namespace

template <class L>
std::vector<FoundWrong> found_for(const Setting<L>& s, const RunScheme& scheme) {
    std::vector<FoundWrong> out;
    const auto& rows = s.catalogue->found;
    const site::Building& from = *site::find_building(*s.job, s.run->from);
    const site::Building& to = *s.building_facts;
    if (from.origin && !from.found.empty()) {
        take(rows, {from.found, "house", "the house"}, scheme, out);
    }
    if (!s.run->found.empty()) {
        take(rows, {s.run->found, "run", "run " + s.run->id}, scheme, out);
    }
    if (!to.found.empty()) {
        take(rows, {to.found, "building", to.name.empty() ? to.id : to.name}, scheme, out);
    }
    return out;
}

std::vector<const char*> put_right(const std::vector<FoundWrong>& found) {
    std::vector<const char*> items;
    for (const FoundWrong& f : found) {
        if (f.row->item.empty()) continue;
        const bool known = std::any_of(items.begin(), items.end(),
                                       [&](const char* item) { return f.row->item == item; });
        if (!known) items.push_back(f.row->item.c_str());
    }
    return items;
}

template std::vector<FoundWrong> found_for(const Setting<Silent>&, const RunScheme&);
template std::vector<FoundWrong> found_for(const Setting<Recording>&, const RunScheme&);

}  // namespace toft::existing
