#include "answer/circuits.h"
#include "answer/describe.h"
#include "answer/design_parts.h"
#include "answer/outline.h"
#include "answer/recorded.h"
#include "answer/selectivity.h"
#include "base/text.h"
#include "study/electrode.h"
#include "worked/longest.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {

namespace {

using rules::Verdict;
using study::BuildingEarthing;

std::string advice_line(const special::Advice& advice) {
    return fmt::format("{}: {} ({})", advice.about, advice.says,
                       advice.footing ? advice.footing->clause : "no clause");
}

/// Of a scheme worked out, `W`, whatever its ledger.
template <class W>
class SchemeWriter {
public:
    using L = typename W::Ledger;

    SchemeWriter(const Question& q, const search::Contender& contender,
                 const study::Setting<Silent>& setting, const W& worked)
        : q_(q), c_(contender), s_(setting), worked_(worked) {}

    SchemeAnswer write(PriceRange range) {
        out_.rank = 1;
        out_.key = c_.key;
        out_.scheme = c_.scheme;
        out_.bought_before = q_.bought_before;
        out_.conditional_on = c_.conditional_on;
        study::add_unsaid(s_, out_.conditional_on);
        out_.headroom = c_.headroom;
        out_.governed_by = c_.governed_by ? c_.governed_by->name : "";
        out_.dependability = static_cast<int>(c_.dependability);
        out_.guard = guard_of(s_, c_.scheme);
        price(range);
        over_years();
        findings();
        run();
        figures();
        building();
        out_.sentence = sentence_of(out_);
        out_.words = short_words(out_);
        house_work();
        add_found(s_, q_.book, out_);
        add_duties(s_, out_);
        add_guard_cautions(out_);
        for (const special::Advice& advice : special::advice_of(special::case_of(s_))) {
            if (advice.needs_a_person) add_once(out_.needs_a_person, advice_line(advice));
        }
        return std::move(out_);
    }

private:
    void price(const PriceRange& range) {
        const price::Price<Silent>& p = c_.price;
        out_.price = {p.house_end.number(),
                      p.run.number(),
                      p.ground.number(),
                      p.far_end.number(),
                      p.test_and_paper.number(),
                      p.remedies.number(),
                      p.net.number(),
                      p.vat.number(),
                      p.total.number(),
                      range.low.net.number(),
                      range.high.net.number(),
                      range.low.total.number(),
                      range.high.total.number(),
                      "GBP",
                      q_.book.name};
    }

    void over_years() {
        YearsAnswer& y = out_.over_years;
        y.years = q_.book.amount(price::Item::years_counted);
        y.lost_kwh_year = figure("energy.lost_kwh_year");
        y.lost = figure("energy.cost_over_years");
        y.total = out_.price.total + y.lost;
    }

    void findings() {
        for (std::size_t i = 0; i < worked_.findings().size(); ++i) {
            const auto& f = worked_.findings()[i];
            if (!f.concerns) continue;
            FindingAnswer a;
            a.rule = f.rule->name;
            a.clause = f.rule->clause;
            a.subject = s_.run->id;
            if (f.circuit >= 0) {
                a.subject = s_.building_facts->circuits[static_cast<std::size_t>(f.circuit)].name;
            }
            a.unit = f.rule->unit;
            a.says = f.says;
            a.at_least = f.at_least;
            a.about_circuits = f.rule->needs == study::Stage::circuits && !f.rule->only_cautions;
            a.verdict = c_.verdicts[i];
            // Circuits that could not be judged make no scheme fall, and none meets the rule. It
            // concerns the run only where one of them may be of the rule's kind.
            if (a.about_circuits && !f.limited && !s_.circuits.left_out.empty())
                a.verdict = Verdict::not_known;
            // Selective nowhere is no figure to show: the words tell.
            const bool shown = !f.rule->only_cautions || std::isfinite(plain(f.use));
            if (f.limited && shown) {
                a.value = f.value;
                a.limit = f.limit;
                a.use = plain(f.use);
            }
            if constexpr (L::records) {
                for (const Line& line : worked_.lines_of(f)) {
                    if (line.citation) add_once(a.basis, basis_word(line.citation->basis));
                }
            }
            out_.findings.push_back(std::move(a));
        }
        for (std::size_t i = 0; i < worked_.pairs().size(); ++i) {
            out_.selectivity.push_back(
                selectivity_answer(worked_.pairs()[i], worked_.protected_by(i)));
        }
    }

    void run() {
        out_.run = outline_of(s_, c_.scheme);
        if (out_.run.rcd) set_upstream_type(out_.guard, *out_.run.rcd);
    }

    double figure(std::string_view name) const { return worked_.value_of(name); }

    FaultRange fault_range(const std::string& name) const {
        return {figure("fault_currents_a." + name + ".smallest"),
                figure("fault_currents_a." + name + ".largest")};
    }

    void figures() {
        FigureAnswers& f = out_.run.figures;
        f.length_m = figure("length_m");
        f.design_current_a = figure("design_current_a");
        f.rating_a = figure("rating_a");
        f.governing_leg = worked_.figures().governing_leg;
        for (const auto& leg : worked_.setting().legs) {
            const auto& x = study::factors_of(leg, c_.scheme.stretch[leg.stretch]);
            f.factors.push_back(
                {plain(x.ca), plain(x.cg), plain(x.ci), plain(x.cs), plain(x.cd), plain(x.cc)});
        }
        f.voltage_drop_percent = figure("voltage_drop_percent");
        f.voltage_drop_total_percent = figure("voltage_drop_total_percent");
        f.loop_impedance_far_ohm = figure("loop_impedance_far_ohm");
        f.loop_impedance_limit_ohm = figure("loop_impedance_limit_ohm");
        f.loop_impedance_test_limit_ohm = figure("loop_impedance_test_limit_ohm");
        f.fault_current_near_ka = figure("fault_current_near_ka");
        f.fault_current_far_ka = figure("fault_current_far_ka");
        f.earth_fault_current_far_a = figure("earth_fault_current_far_a");
        f.near_line_neutral_a = fault_range("near.line_neutral");
        f.near_line_earth_a = fault_range("near.line_earth");
        f.far_line_neutral_a = fault_range("far.line_neutral");
        f.far_line_earth_a = fault_range("far.line_earth");
        if (c_.scheme.phases == 3) {
            f.near_line_line_a = fault_range("near.line_line");
            f.far_line_line_a = fault_range("far.line_line");
            f.near_three_lines_a = figure("fault_currents_a.near.three_lines.largest");
            f.far_three_lines_a = figure("fault_currents_a.far.three_lines.largest");
        }
        f.neutral_share = s_.neutral_share;
        const double t = figure("disconnection_s");
        if (std::isfinite(t)) f.disconnection_s = t;
        f.r1_plus_r2_20c_ohm = figure("r1_plus_r2_20c_ohm");
        f.touch = touch();
    }

    TouchAnswer touch() const {
        const study::TouchFigures<L>& t = worked_.touch();
        const auto bounded = [&](const char* name) -> std::optional<double> {
            const double seconds = figure(name);
            if (std::isfinite(seconds)) return seconds;
            return std::nullopt;
        };
        TouchAnswer answer;
        answer.against = t.own_electrode ? "the ground" : "metal on the house's earth";
        answer.outbuilding_v = figure("touch.outbuilding_v");
        answer.house_v = figure("touch.house_v");
        answer.lasts_s = bounded("touch.lasts_s");
        answer.longest_dry_s = bounded("touch.longest_dry_s");
        answer.longest_wet_s = bounded("touch.longest_wet_s");
        answer.past_curve = t.dry.range == shock::TouchRange::past_curve;
        return answer;
    }

    void building() {
        BuildingAnswer& a = out_.building;
        a = building_outline(s_, c_.scheme);
        bonds(a);
        if (c_.scheme.earthing == BuildingEarthing::own_electrode) electrode(a);
        a.rcds = board_rcds(out_.guard);
        a.circuits = circuits_of(worked_);
        for (CircuitAnswer& circuit : a.circuits) {
            const auto& guard = out_.guard.circuits[static_cast<std::size_t>(circuit.number - 1)];
            circuit.rcd_ma = guard.fitted_ma;
            circuit.rcd_type = site::word(guard.sort.type);
        }
    }

    void bonds(BuildingAnswer& a) {
        for (const FindingAnswer& f : out_.findings) {
            if (f.rule != "bonding-size" || !f.limit) continue;
            out_.run.bond_equivalent_mm2 = f.value;
            for (BondAnswer& bond : a.bonding) bond.required_mm2 = *f.limit;
        }
    }

    void electrode(BuildingAnswer& a) {
        const site::Electrode& e = s_.building_facts->electrode;
        ElectrodeAnswer out;
        out.rods = e.rods.known ? static_cast<int>(e.rods.low) : 1;
        out.length_m =
            e.length.known ? e.length.low.number() : q_.catalogue.limits.rod_length.value.number();
        out.largest_ohm = s_.building.ra_most.number();
        const site::Fact<Ohms> read = study::reading_of(e);
        out.measured = read.known && read.standing == site::Standing::measured;
        a.electrode = out;
    }

    void house_work() {
        for (const auto& f : worked_.findings()) {
            bool found = false;
            const price::Item item = price::item_of(f.remedy, found);
            if (!found) continue;
            out_.house_work.push_back(fmt::format("{} (about £{} before tax, in the price): {}",
                                                  f.remedy, fixed(q_.book.amount(item), 0),
                                                  f.says));
        }
    }

    const Question& q_;
    const search::Contender& c_;
    const study::Setting<Silent>& s_;
    const W& worked_;
    SchemeAnswer out_;
};

}  // namespace

void add_once(std::vector<std::string>& words, const std::string& word) {
    if (std::find(words.begin(), words.end(), word) == words.end()) words.push_back(word);
}

worked::Subject subject_of(const Question& q) {
    return {q.catalogue, q.book, q.job, run_at(q, 0), q.bought_before};
}

SchemeAnswer written(const Question& q, const search::Contender& contender,
                     const study::Setting<Silent>& setting, Citations& citations) {
    const Recorded recorded(q, setting, contender.scheme);
    const PriceRange range{recorded.price_low(), recorded.price_high()};
    SchemeAnswer answer = SchemeWriter<Recorded>(q, contender, setting, recorded).write(range);
    answer.bill = recorded.bill();
    if (!q.in_short) {
        answer.run.figures.longest_m =
            worked::longest_by_rule(subject_of(q), setting, contender.scheme);
    }
    append(citations, recorded.citations());
    append(citations, citations_of(answer.guard));
    return answer;
}

SchemeAnswer written_bare(const Question& q, const search::Contender& contender,
                          const study::Setting<Silent>& setting, const PriceRange& range) {
    using Bare = worked::Worked<Silent>;
    const Bare worked(subject_of(q), setting, contender.scheme);
    return SchemeWriter<Bare>(q, contender, setting, worked).write(range);
}

}  // namespace toft::answer
