#include "ware/unpriced.h"

#include "base/text.h"
#include "trench/lying.h"
#include "ware/at_run.h"
#include "ware/ground_rows.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::ware {

namespace {

constexpr const char* kit_item = "insulated gland kit";
constexpr const char* unpriced = "not in the price";

int ends_of(const answer::StretchAnswer& s) {
    if (!s.armoured) return 0;
    return s.parallel * (static_cast<int>(!s.armour_near) + static_cast<int>(!s.armour_far));
}

Draft of(Group group, double quantity, const char* unit) {
    Draft draft;
    draft.row.group = group;
    draft.row.quantity = quantity;
    draft.row.unit = unit;
    return draft;
}

/// Kits that the bill does not price, by the last cable whose armour ends insulated.
void add_kits(const tables::Catalogue& catalogue, const RunBill& part, std::vector<Draft>& all) {
    double missing = insulated_ends(part.scheme.run);
    for (const price::BillLine& line : part.bill) {
        if (line.item == kit_item) missing -= line.quantity;
    }
    if (!(missing > 0)) return;
    Draft draft = of(Group::run, missing, "each");
    draft.row.what = kit_item;
    for (const tables::ItemRow& known : catalogue.ware.items) {
        if (known.item == kit_item) draft.row.what = known.what;
    }
    for (const answer::StretchAnswer& s : part.scheme.run.stretches) {
        if (ends_of(s) > 0) draft.row.size = AtRun(catalogue, part).thickness_words(s.last_leg);
    }
    draft.row.note = fmt::format("on the run to {}; {}", part.scheme.building.name, unpriced);
    all.push_back(std::move(draft));
}

void add_rod(const tables::Catalogue& catalogue, const RunBill& part, std::vector<Draft>& all) {
    if (!part.scheme.building.electrode) return;
    const Metres length = catalogue.limits.bond_run.value;
    Draft draft = of(Group::far_end, length.number(), "m");
    draft.bought = Bought::cut;
    draft.pieces = {length};
    draft.where = {part.scheme.building.name};
    draft.row.what = "single-core copper cable, PVC, green-and-yellow, sheathed";
    draft.row.size = significant(catalogue.limits.separate_buried.value.number(), 4) + " mm²";
    draft.row.note = fmt::format(
        "earthing conductor from the rod to the earth bar, in the ground without mechanical "
        "guard; {} m is taken for each, the survey states no length: measure; {}",
        significant(length.number(), 3), unpriced);
    all.push_back(std::move(draft));
}

/// The duct for signals that lies in the leg's trench; none where nobody digs.
std::optional<trench::Lying> signals_at(const tables::Catalogue& catalogue, const RunBill& part,
                                        std::size_t leg) {
    const site::Leg& at = part.run.legs[leg];
    if (!site::buried(at.method) || !at.length.known) return std::nullopt;
    const auto* cable = AtRun(catalogue, part).at_leg(static_cast<int>(leg) + 1);
    if (cable && trench::stays(*cable)) return std::nullopt;
    for (const trench::Lying& one : trench::lying_of(catalogue, part.run, at, nullptr)) {
        if (one.kind == trench::Kind::data) return one;
    }
    return std::nullopt;
}

void add_signals(const tables::Catalogue& catalogue, const RunBill& part, std::vector<Draft>& all) {
    Draft draft = of(Group::ground, 0, "m");
    draft.bought = Bought::coupled;
    for (std::size_t leg = 0; leg < part.run.legs.size(); ++leg) {
        const auto duct = signals_at(catalogue, part, leg);
        if (!duct) continue;
        draft.row.quantity += part.run.legs[leg].length.high.number();
        draft.row.size = mm_words(duct->across);
        draft.row.what = duct->says.substr(duct->says.find("duct"));
    }
    if (!(draft.row.quantity > 0)) return;
    draft.row.note =
        fmt::format("in the trench to {}, apart from the power cable as the ground sheet shows; {}",
                    part.scheme.building.name, unpriced);
    Draft cord = cord_row(of(Group::ground, draft.row.quantity, "m"));
    all.push_back(std::move(draft));
    all.push_back(std::move(cord));
}

}  // namespace

int insulated_ends(const answer::RunAnswer& run) {
    int ends = 0;
    for (const answer::StretchAnswer& s : run.stretches) ends += ends_of(s);
    return ends;
}

std::vector<Draft> unpriced_rows(const tables::Catalogue& catalogue, const RunBill& part) {
    std::vector<Draft> all;
    add_kits(catalogue, part, all);
    add_rod(catalogue, part, all);
    add_signals(catalogue, part, all);
    return all;
}

}  // namespace toft::ware
