#include "outage/dark.h"

#include "base/text.h"
#include "outage/tree.h"

#include <fmt/format.h>

namespace toft::outage {

namespace {

constexpr const char* kind = "What goes dark";
constexpr std::size_t most_named = 40;  // columns named in words

/// It takes, surely or possibly, more than the circuit it is on.
bool spreads(const guard::Darkness& dark, const guard::Event& event) {
    for (std::size_t p = 0; p < dark.parts.size(); ++p) {
        const bool own = !dark.parts[p].house && dark.parts[p].circuit == event.circuit;
        if (!own && event.dark[p] != Certainty::no) return true;
    }
    return false;
}

std::string sentence(const guard::Darkness& dark) {
    int weak = 0;
    int heavy = 0;
    int spreading = 0;
    for (const guard::Event& event : dark.events) {
        if (!guard::on_circuit(event.trouble)) continue;
        const bool is_weak = event.trouble == guard::Trouble::weak_earth;
        weak += is_weak && spreads(dark, event) ? 1 : 0;
        heavy += is_weak ? 0 : 1;
        spreading += !is_weak && spreads(dark, event) ? 1 : 0;
    }
    const std::string light =
        weak == 0 ? "A weak earth fault on a circuit, of damp or a touch, takes that circuit and "
                    "nothing else."
                  : "A weak earth fault on a circuit, of damp or a touch, may take more than that "
                    "circuit.";
    if (spreading == 0) return light + " Heavier faults take no more than their circuit.";
    return light +
           fmt::format(" Of {} heavier faults on circuits {} may take more.", heavy, spreading);
}

Items sample(Certainty certainty) { return cell({8, 1, 34, 17}, certainty); }

void legend(parts::WordColumn& column) {
    column.heading("how to read it");
    terrain::say_signed(column, sample(Certainty::surely), "surely dark", "");
    terrain::say_signed(column, sample(Certainty::possibly), "possibly dark",
                        "nothing known promises that the device in front stays closed");
    terrain::say_signed(column, sample(Certainty::no), "stays on", "");
    terrain::say_signed(column, device_sign({21, 9}, Opens::overcurrent), "opens on overcurrent",
                        "");
    terrain::say_signed(column, device_sign({21, 9}, Opens::residual), "opens on residual current",
                        "");
    terrain::say_signed(column, device_sign({21, 9}, Opens::both), "opens on either", "");
}

Items number_sign(std::size_t i) {
    return {text({sign_high + 5, 12}, part_sign(i),
                 {.size = 12, .weight = Weight::bold, .anchor = Anchor::middle})};
}

std::string protection_words(const answer::GuardAnswer& guard, const guard::Part& part) {
    if (part.house) return "";
    const answer::CircuitGuard& c = guard.circuits[part.circuit];
    const std::string instead = answer::instead_of(c.sort);
    return fmt::format("{} mA, type {}{}", significant(c.fitted_ma, 3), site::word(c.sort.type),
                       instead.empty() ? "" : " (or " + instead + ")");
}

void named_parts(const answer::GuardAnswer& guard, parts::WordColumn& column) {
    column.heading("what the numbers are");
    const std::vector<guard::Part>& all = guard.dark.parts;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i >= most_named && !all[i].house) continue;
        terrain::say_signed(column, number_sign(i), all[i].name, protection_words(guard, all[i]));
    }
    if (all.size() > most_named) {
        terrain::say_small(column, "Not all circuits are drawn: `toft dark` has them all.");
    }
}

/// Says below the grid that circuits are left out of it.
Drawn with_left_out(Drawn drawn, const Columns& columns, const Space& room) {
    const double size = room.letters();
    drawn.items.emplace_back(
        text({room.left, drawn.foot + 1.2 * size},
             fmt::format("{} circuits more: see `toft dark`", columns.left_out), {.size = size}));
    drawn.foot += 1.6 * size;
    return drawn;
}

void explain(const answer::GuardAnswer& guard, parts::WordColumn& column) {
    named_parts(guard, column);
    legend(column);
    if (!guard.cautions.empty()) column.heading("to mind");
    for (const std::string& caution : guard.cautions) terrain::say(column, caution);
    for (const guard::Remark& remark : guard.remarks) {
        if (remark.settled) terrain::say_small(column, remark.says);
    }
}

}  // namespace

Scene dark_picture(const site::Job& job, const answer::Answer& answer, std::size_t scheme_index,
                   double width) {
    if (scheme_index >= answer.schemes.size()) {
        return terrain::lay_out(
            job, {kind, "", "No scheme is sound: there is nothing to go dark.", {}, {}, {}}, width);
    }
    const answer::SchemeAnswer& scheme = answer.schemes[scheme_index];
    const guard::Darkness& dark = scheme.guard.dark;
    terrain::Content content{kind, scheme.building.name, sentence(dark), {}, {}, {}};
    content.draw = [&](const Space& room) {
        const Columns columns = columns_of(dark, room);
        const bool rcbo = scheme.run.rcd && scheme.run.device.kind == "RCBO";
        Drawn drawn = tree(dark, columns, room, rcbo);
        Drawn rows = grid(dark, columns, room, drawn.foot);
        append(drawn.items, std::move(rows.items));
        drawn.foot = rows.foot;
        if (columns.left_out > 0) drawn = with_left_out(std::move(drawn), columns, room);
        return drawn;
    };
    content.explain = [&](parts::WordColumn& column) { explain(scheme.guard, column); };
    return terrain::lay_out(job, content, width);
}

}  // namespace toft::outage
