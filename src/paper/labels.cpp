#include "paper/labels.h"

#include "base/text.h"
#include "page/pages.h"
#include "paper/outgoing.h"
#include "paper/papers.h"
#include "paper/plain_words.h"
#include "parts/device_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace toft::paper {

namespace {

using answer::DeviceAnswer;
using answer::SchemeAnswer;
using tables::LabelRow;

std::string label_number(double x) { return significant(x, 6); }

/// As the trade writes a device: "32 A type B breaker", "32 A BS 88-2 fuse".
std::string label_device(const DeviceAnswer& d) {
    if (d.curve.empty())
        return fmt::format("{} A {} {}", label_number(d.rating_a), d.standard, d.kind);
    if (d.kind == "moulded-case breaker")
        return fmt::format("{} A {}", label_number(d.rating_a), d.kind);
    return fmt::format("{} A type {} {}", label_number(d.rating_a), d.curve, d.kind);
}

std::string label_cable(const answer::RunAnswer& run) {
    std::string text;
    for (const answer::StretchAnswer& s : run.stretches) {
        text += fmt::format("{}{}-core {} mm² {}", text.empty() ? "" : ", then ", s.cores,
                            label_number(s.live_mm2), s.family);
    }
    return text;
}

bool applies(const std::vector<std::string>& situations, const std::string& when) {
    return std::find(situations.begin(), situations.end(), when) != situations.end();
}

/// Line and protective conductor, mm², as the chart has them of a circuit.
std::string chart_cores(const answer::StretchAnswer& s) {
    const auto protective = s.cpc_mm2 ? s.cpc_mm2 : s.separate_mm2;
    return fmt::format("{} / {}", label_number(s.live_mm2),
                       protective ? label_number(*protective) : "armour");
}

/// What the run starts in, with its article: what is new is called so.
std::string head_place(const answer::RunAnswer& run) {
    if (!run.feeder.empty()) return "the board of " + run.feeder;
    const char* const age = run.device_stays ? "" : "new ";
    if (run.fed_from == "tails") {
        const bool fuse = run.device.curve.empty();
        return fmt::format("the {}{} at the house", age, fuse ? "switch-fuse" : "box");
    }
    if (run.fed_from == "new board") return fmt::format("the {}small board at the house", age);
    return "the board of the house";
}

std::string without_article(const std::string& words) {
    return words.rfind("the ", 0) == 0 ? words.substr(4) : words;
}

bool old_colours(const answer::RunAnswer& run) {
    for (const answer::StretchAnswer& s : run.stretches) {
        for (const answer::CoreAnswer& core : s.core_list) {
            if (core.colour == "red" || core.colour == "yellow") return true;
        }
    }
    return false;
}

bool of_the_house(const LabelRow& row) { return row.at == "house board" || row.at == "origin"; }

class Placer {
public:
    explicit Placer(const Subject& s) : s_(s) {}

    std::vector<Placed> place() {
        const auto parts = runs_of(s_);
        for (const LabelRow& row : rows()) {
            if (!of_the_house(row)) continue;
            const auto here = std::find_if(parts.begin(), parts.end(), [&](const auto* part) {
                return applies(situations_of(s_, *part), row.when);
            });
            if (here != parts.end()) add(row, **here, all_sources());
        }
        for (const SchemeAnswer* part : parts) of_building(*part);
        return std::move(placed_);
    }

private:
    const std::vector<LabelRow>& rows() const { return s_.catalogue.handover.labels; }

    /// Every second supply of the place.
    std::vector<std::string> all_sources() const {
        std::vector<std::string> all;
        for (const SchemeAnswer* part : runs_of(s_)) {
            for (std::string& one : sources_behind(s_, part->building.id)) {
                if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
            }
        }
        return all;
    }

    void of_building(const SchemeAnswer& part) {
        const auto here = situations_of(s_, part);
        const auto sources = sources_behind(s_, part.building.id);
        for (const LabelRow& row : rows()) {
            if (of_the_house(row) || !applies(here, row.when)) continue;
            if (const auto spots = spots_of(row, part)) {
                for (const std::string& spot : *spots) add(row, part, sources, spot);
            } else {
                const std::size_t copies = row.at == "route" ? 2 : 1;
                for (std::size_t i = 0; i < copies; ++i) add(row, part, sources);
            }
        }
    }

    /// Each of what the row's place has several of, or none; no list for a place that is one.
    std::optional<std::vector<std::string>> spots_of(const LabelRow& row,
                                                     const SchemeAnswer& part) const {
        std::vector<std::string> spots;
        const std::string far = "board of " + building_name(s_, part.building.id);
        if (row.at == "bond") {
            for (const answer::BondAnswer& bond : part.building.bonding) {
                spots.push_back(part_name(bond));
            }
        } else if (row.at == "insulated gland") {
            const auto& all = part.run.stretches;
            for (std::size_t i = 0; i < all.size(); ++i) {
                if (!all[i].armoured || all[i].armour_far) continue;
                spots.push_back(i + 1 == all.size() ? far : fmt::format("joint box {}", i + 1));
            }
        } else if (row.at == "old cores") {
            if (old_colours(part.run)) {
                spots = {
                    fmt::format("{}, at the cable to {}", without_article(head_place(part.run)),
                                building_name(s_, part.building.id)),
                    far};
            }
        } else {
            return std::nullopt;
        }
        return spots;
    }

    std::string place_of(const LabelRow& row, const SchemeAnswer& part,
                         const std::string& spot) const {
        const std::string name = building_name(s_, part.building.id);
        if (row.at == "outbuilding board") return "board of " + name;
        if (row.at == "near board") {
            return fmt::format("{}, at the device for {}", without_article(head_place(part.run)),
                               name);
        }
        if (row.at == "house board") return "board of the house";
        if (row.at == "origin") return "intake and meter";
        if (row.at == "rod") return "clamp on the earth rod of " + name;
        if (row.at == "bond") return fmt::format("clamp on the {} of {}", spot, name);
        if (row.at == "insulated gland") return "gland of the incoming cable, " + spot;
        if (row.at == "old cores") return spot;
        return fmt::format("route to {}, where the cable goes down or comes up", name);
    }

    void add(const LabelRow& row, const SchemeAnswer& part, const std::vector<std::string>& sources,
             const std::string& spot = {}) {
        Fillings fill{{"building", building_name(s_, part.building.id)},
                      {"feeder", feeder_name(part.run)},
                      {"device", label_device(part.run.device)},
                      {"cable", label_cable(part.run)},
                      {"part", spot},
                      {"head", head_place(part.run)},
                      {"sources", listed(sources)},
                      {"voltage", label_number(s_.job.intake.u0.number())},
                      {"months", label_number(s_.catalogue.handover.terms.test_months.value)}};
        Placed one;
        one.key = row.key;
        one.row = &row;
        one.place = place_of(row, part, spot);
        one.label.caption = fmt::format("{}  {}", placed_.size() + 1, one.place);
        one.label.warning = row.style == "warning";
        one.label.width = drawing::units_of_mm(row.width_mm);
        one.label.big = capital(filled(row.big, fill));
        one.label.small = capital(filled(row.small, fill));
        one.label.fields = row.fields;
        if (row.style == "chart") one.label.rows = chart_rows(s_, part);
        placed_.push_back(std::move(one));
    }

    const Subject& s_;
    std::vector<Placed> placed_;
};

std::string basis_of(const LabelRow& row) {
    return row.citation ? basis_word(row.citation->basis) : "";
}

/// Which label goes where, and whose word each is; labels alike stand in one row.
page::Table label_list(const std::vector<Placed>& placed) {
    page::Table table{{{"No.", 1}, {"Label", 4}, {"Fix it at", 4}, {"Clause, basis", 3}}, {}};
    for (std::size_t i = 0; i < placed.size(); ++i) {
        const Placed& one = placed[i];
        table.rows.push_back({{std::to_string(i + 1), one.label.big, one.place,
                               fmt::format("{}: {}", one.row->clause, basis_of(*one.row))}});
    }
    return table;
}

}  // namespace

std::vector<ChartRow> chart_rows(const Subject& s, const SchemeAnswer& part) {
    std::vector<ChartRow> rows;
    std::vector<bool> shown;
    const site::Building* building = site::find_building(s.job, part.building.id);
    if (building) shown.resize(building->circuits.size());
    for (const answer::CircuitAnswer& c : part.building.circuits) {
        const std::size_t place = static_cast<std::size_t>(c.number - 1);
        if (c.number > 0 && place < shown.size()) shown[place] = true;
        const std::string phases = c.phases == 3 ? ", three-phase" : "";
        rows.push_back(
            {std::to_string(c.number), c.name + phases,
             fmt::format("{} {} {} A", c.device.kind, c.device.curve,
                         label_number(c.device.rating_a)),
             fmt::format("{} / {}", label_number(c.live_mm2), label_number(c.cpc_mm2)),
             c.rcd_ma > 0 ? fmt::format("{} mA type {}", label_number(c.rcd_ma), c.rcd_type) : ""});
    }
    for (std::size_t i = 0; i < shown.size(); ++i) {
        if (shown[i]) continue;
        rows.push_back({std::to_string(i + 1), building->circuits[i].name + " (to be designed)"});
    }
    std::size_t number = shown.size();
    for (const SchemeAnswer* fed : outgoing(s, part.building.id)) {
        const answer::RunAnswer& run = fed->run;
        rows.push_back({std::to_string(++number), "Feeds " + building_name(s, fed->building.id),
                        label_device(run.device), chart_cores(run.stretches.front()),
                        run.rcd ? parts::rcd_words(*run.rcd) : ""});
    }
    rows.resize(rows.size() + blank_rows);
    return rows;
}

std::vector<Placed> labels_of(const Subject& s) { return Placer(s).place(); }

page::Paper labels(const Subject& s) {
    page::Paper paper = blank(s, "Labels");
    paper.blocks.push_back(page::Heading{"Labels to print, cut out and fix", page::Level::chapter});
    paper.blocks.push_back(page::Words{
        "Print at full size on something that lasts where it goes: engraved or printed plastic "
        "outdoors and at rods, not paper. Cut along the broken lines. The line of 100 mm under the "
        "labels tells whether the printer kept the size."});
    paper.blocks.push_back(page::Caution{
        "Labels follow what was planned. Whoever builds and tests it, a competent and licensed "
        "person, fixes only those that are true of what was built, in the words that the local "
        "code "
        "and the standard in force ask for."});
    const std::vector<Placed> placed = labels_of(s);
    paper.blocks.push_back(label_list(placed));
    const tables::ClientTerms& terms = s.catalogue.handover.terms;
    const LetterSizes sizes = letter_sizes(terms.big_letters.value, terms.small_letters.value);
    const double high = page::field.height() - drawing::units_of_mm(4);
    std::vector<drawing::Scene> scenes;
    for (const Placed& one : placed) {
        for (drawing::Scene& scene :
             label_scenes(one.label, sizes, high - drawing::units_of_mm(10))) {
            scenes.push_back(std::move(scene));
        }
    }
    for (drawing::Scene& sheet : label_sheets(scenes, page::field.width(), high)) {
        paper.blocks.push_back(page::NewPage{});
        paper.blocks.push_back(page::Picture{std::move(sheet), page::field.height(), {}});
    }
    return paper;
}

}  // namespace toft::paper
