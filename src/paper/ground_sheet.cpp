#include "paper/ground_sheet.h"

#include "base/text.h"
#include "digging/route_plan.h"
#include "digging/sheet.h"
#include "digging/trench_section.h"
#include "page/pages.h"
#include "trench/words.h"

#include <fmt/format.h>

#include <cmath>
#include <map>

namespace toft::paper {

namespace {

using page::Row;
using page::Table;
using trench::Works;

/// The sheet of one scheme while it is being written.
class GroundWriter {
public:
    explicit GroundWriter(const Subject& s)
        : s_(s),
          works_(trench::works_of({s.catalogue, s.job, &s.answer.schemes[s.scheme]})),
          paper_(blank(s, "Ground sheet")) {}

    page::Paper write() {
        plan();
        legs();
        sections();
        quantities();
        if (digs()) {
            before_digging();
            who_digs();
        }
        photographs();
        return std::move(paper_);
    }

private:
    void put(page::Block block) { paper_.blocks.push_back(std::move(block)); }
    void heading(const std::string& words) { put(page::Heading{words, page::Level::part}); }
    /// No less than it is.
    static std::string mm(Metres m) {
        return fixed(std::ceil(1000 * m.number() - 1e-6), 0) + " mm";
    }

    void plan() {
        put(page::Heading{"Ground works of " + s_.answer.job, page::Level::chapter});
        for (const site::Run& run : works_.job.runs) {
            if (!run.existing) continue;
            put(
                page::Caution{fmt::format("An old cable lies along the way from {} to {}, whether "
                                          "it stays or not. It may be live: isolate it, prove it "
                                          "dead and find it before anything is dug there.",
                                          building_name(s_, run.from), building_name(s_, run.to))});
        }
        const digging::Measured plan = digging::route_plan(works_, {page::field.width(), false});
        put(page::Picture{plan.scene, plan.scene.height});
        for (const std::string& words : works_.says) put(page::Caution{words});
    }

    /// Trenches, or an electrode to be driven.
    bool digs() const { return !works_.trenches.empty() || !works_.electrodes.empty(); }

    void sections() {
        if (works_.sorts.empty()) {
            heading("No trench is dug");
            put(
                page::Words{"No leg of this scheme lies in ground that is to be opened: the table "
                            "says how each is fixed."});
            return;
        }
        put(page::NewPage{});
        heading(works_.sorts.size() == 1 ? "The trench" : "The trenches");
        for (std::size_t i = 0; i < works_.sorts.size(); ++i) {
            const digging::Measured cut =
                digging::trench_section(s_.catalogue.trench, works_, i, page::field.width());
            put(page::Picture{cut.scene, cut.scene.height});
        }
    }

    std::string lies_in(const trench::LegWork& leg) const {
        if (!leg.cable) return "not settled";
        std::string words;
        for (const trench::Lying& one :
             trench::lying_of(s_.catalogue, works_.job.runs[leg.run], leg.leg, leg.cable)) {
            words += (words.empty() ? "" : "; ") + one.says;
        }
        return words;
    }

    void legs() {
        heading("Every leg, from the house outwards");
        Table table{{{"Leg", 1}, {"Length", 1.6}, {"How it lies", 4}, {"What lies or holds it", 5}},
                    {}};
        for (std::size_t r = 0; r < works_.job.runs.size(); ++r) {
            table.rows.push_back({{trench::run_sign(r), "", trench::run_words(works_, r)}, true});
            for (const trench::LegWork& leg : works_.legs) {
                if (leg.run != r) continue;
                const bool ground = site::buried(leg.leg.method);
                table.rows.push_back({{leg.sign, trench::length_words(leg.leg.length),
                                       trench::leg_words(works_, leg),
                                       ground ? lies_in(leg) : trench::fixed_words(leg.leg)}});
            }
        }
        put(std::move(table));
    }

    void quantities() {
        if (works_.trenches.empty()) return;
        put(page::NewPage{});
        heading("Trenches");
        Table table{{{"Legs in it", 2},
                     {"Surface", 2},
                     {"Length", 1.4, page::Side::right},
                     {"Width", 1.4, page::Side::right},
                     {"Depth dug", 1.6, page::Side::right},
                     {"Over cable", 1.6, page::Side::right},
                     {"Dug", 1.4, page::Side::right}},
                    {}};
        for (const trench::Trench& t : works_.trenches) {
            table.rows.push_back(
                {{trench::signs_of(works_, t), t.surface ? site::word(*t.surface) : "not stated",
                  trench::metre_words(t.of.length), mm(t.section.width), mm(t.section.depth),
                  mm(t.cover.depth) + (t.cover.stated ? "" : " (not stated)"),
                  trench::volume_words(t.of.dug)}});
        }
        put(std::move(table));
        totals();
    }

    Table& add(Table& table, const std::string& what, const std::string& there,
               const std::string& buy, const std::string& how) const {
        table.rows.push_back({{what, there, buy, how}});
        return table;
    }

    void totals() {
        heading("Quantities");
        Table table{{{"What", 2.4},
                     {"In the ground", 2, page::Side::right},
                     {"Buy or move", 2, page::Side::right},
                     {"How it was reckoned", 5}},
                    {}};
        soil(table);
        sand(table);
        lengths(table);
        surfaces(table);
        put(std::move(table));
        put(
            page::Words{"By the longest that each length may be. Cable, glands and fixings stand "
                        "on the list of materials.",
                        "", false, true});
    }

    void soil(Table& table) const {
        const trench::Quantities& q = works_.total;
        const tables::TrenchSizes& sizes = s_.catalogue.trench.sizes;
        const std::string bulking =
            fmt::format("dug soil takes {} % more room", significant(100 * sizes.bulking.value, 3));
        add(table, "Soil dug", trench::volume_words(q.dug), trench::volume_words(q.spoil), bulking);
        add(table, "Soil left over", "", trench::volume_words(q.left_over),
            "what sand, cables and ducts take the place of; where it goes is settled first");
    }

    void sand(Table& table) const {
        const trench::Quantities& q = works_.total;
        const tables::TrenchSizes& sizes = s_.catalogue.trench.sizes;
        const int bulk = trench::bags(q.sand_kg, sizes.bulk_bag_kg.value);
        const int small = trench::bags(q.sand_kg, sizes.small_bag_kg.value);
        add(table, "Sand, soft and washed", trench::volume_words(q.sand),
            trench::volume_words(q.sand_to_buy),
            fmt::format("{} t with {} % waste at {} kg/m³: {} bulk bag{} of {} kg, or {} of {} kg",
                        significant(q.sand_kg / 1000, 2),
                        significant(100 * sizes.sand_waste.value, 3),
                        significant(sizes.sand_kg_m3.value, 4), bulk, bulk == 1 ? "" : "s",
                        significant(sizes.bulk_bag_kg.value, 4), small,
                        significant(sizes.small_bag_kg.value, 4)));
    }

    void lengths(Table& table) const {
        const trench::Quantities& q = works_.total;
        const tables::TrenchSizes& sizes = s_.catalogue.trench.sizes;
        const auto waste = [](double share) {
            return fmt::format("{} % waste", significant(100 * share, 3));
        };
        add(table, "Warning tape", trench::metre_words(q.tape),
            trench::metres_to_buy(q.tape_to_buy), waste(sizes.tape_waste.value));
        for (const trench::DuctLength& duct : q.ducts) {
            add(table, "Duct, " + mm(duct.outer), trench::metre_words(duct.length),
                trench::metres_to_buy(duct.to_buy),
                waste(sizes.duct_waste.value) + "; with a draw cord");
        }
    }

    void surfaces(Table& table) const {
        std::map<std::string, trench::SquareMetres> areas;
        for (const trench::Trench& t : works_.trenches) {
            areas[trench::made_good(s_.catalogue.trench, t.surface).surface] += t.of.surface;
        }
        for (const auto& [surface, area] : areas) {
            for (const tables::MadeGood& row : s_.catalogue.trench.made_good) {
                if (row.surface != surface) continue;
                const std::string figure = significant(area.number(), 2) + " m²";
                add(table, "Make good: " + surface, figure, "", row.says);
            }
        }
    }

    void before_digging() {
        heading("Before digging");
        const double doubt = s_.catalogue.trench.sizes.position_doubt.value.number();
        const std::string steps[] = {
            "Ask every owner of services for drawings of what lies there, and the operator of the "
            "electricity network among them. Drawings may be out by " +
                significant(doubt, 2) + " m sideways and tell no depth.",
            "Walk the route: covers, meters, gullies, patches in the surface, lamps and sockets "
            "outdoors all tell of something below.",
            "Scan along and across the route with a locator by someone trained to, in more than "
            "one mode; mark what is found. What is not found may still be there.",
            "Dig trial holes by hand where the route crosses or comes near anything. No machine "
            "and no pick within half a metre of a service.",
            "Keep " + mm(s_.catalogue.trench.sizes.pipe_apart.value) +
                " from other services at the least; gas and others ask for more: their owners "
                "decide.",
            "Trees, boundaries, shared paths and roads have owners and rules: ask before opening "
            "them.",
            "If a service is struck: everybody away, no flame, no switch; call its owner and, for "
            "people hurt or gas, the emergency number."};
        int number = 0;
        for (const std::string& step : steps) {
            put(page::Words{step, std::to_string(++number) + "."});
        }
        services();
        put(page::Caution{digging::digging_caution()});
    }

    void services() {
        const std::vector<trench::Service> all = trench::services_of(works_);
        if (all.empty()) {
            put(page::Words{
                "The survey states no pipe or metal in the ground at any building. That "
                "is not to say there is none.",
                "–"});
            return;
        }
        heading("Pipes and metal that the survey states");
        Table table{{{"At", 3}, {"What", 5}, {"Found at (write)", 3}}, {}, true};
        for (const trench::Service& one : all) table.rows.push_back({{one.building, one.says, ""}});
        put(std::move(table));
    }

    void who_digs() {
        heading("Who digs");
        for (const char* name :
             {"Dug by, with telephone", "From, to (dates)", "By hand or machine",
              "Drawings of services asked for on", "Scanned by, on", "Soil left over goes to"}) {
            put(page::Field{name});
        }
    }

    bool wanted(const std::string& when) const {
        if (when == "services") return !trench::services_of(works_).empty();
        if (when == "electrode") return !works_.electrodes.empty();
        for (const trench::LegWork& leg : works_.legs) {
            if (when == "fixed" && !site::buried(leg.leg.method)) return true;
            if (when == "armour" && leg.cable && leg.cable->armoured) return true;
        }
        for (const answer::SchemeAnswer* part : runs_of(s_)) {
            if (when == "joint" && part->run.stretches.size() > 1) return true;
        }
        for (const trench::Trench& t : works_.trenches) {
            if (when == "always") return true;
            if (when == "several" && t.lying.size() > 1) return true;
            for (const trench::Lying& one : t.lying) {
                const bool duct = one.kind == trench::Kind::duct || one.kind == trench::Kind::data;
                if (when == "duct" && duct) return true;
            }
        }
        return false;
    }

    void photographs() {
        if (digs()) put(page::NewPage{});
        heading(works_.trenches.empty() ? "Photograph as it is done"
                                        : "Photograph before it is covered");
        put(
            page::Words{"With a staff or rule in the picture and something that shows where it was "
                        "taken. What is covered unseen may have to be opened again."});
        Table table{{{"Done", 1}, {"What", 7}, {"Taken by, on", 3}}, {}, true};
        for (const tables::PhotoStep& step : s_.catalogue.trench.photos) {
            if (wanted(step.when)) table.rows.push_back({{"☐", step.says, ""}});
        }
        put(std::move(table));
        depths();
        for (const char* name : {"Remarks", "Finished on", "Name and signature"}) {
            put(page::Field{name});
        }
    }

    void depths() {
        if (works_.trenches.empty()) return;
        heading("Depths as dug");
        Table table{
            {{"Trench", 2}, {"Wanted over the cable", 3}, {"Least found (write)", 3}, {"Where", 3}},
            {},
            true};
        for (const trench::Trench& t : works_.trenches) {
            table.rows.push_back(
                {{trench::signs_of(works_, t),
                  mm(t.cover.depth) + (t.cover.stated ? "" : ", not stated: settle it first"), "",
                  ""}});
        }
        put(std::move(table));
    }

    const Subject& s_;
    const Works works_;
    page::Paper paper_;
};

}  // namespace

page::Paper ground_sheet(const Subject& s) { return GroundWriter(s).write(); }

}  // namespace toft::paper
