#include "answer/answer.h"
#include "answer/circuits.h"
#include "answer/demand.h"
#include "answer/describe.h"
#include "answer/design_parts.h"
#include "answer/longest.h"
#include "answer/outline.h"
#include "answer/recorded.h"
#include "answer/selectivity.h"
#include "answer/unknowns.h"
#include "answer/why.h"
#include "base/text.h"
#include "price/offer.h"
#include "study/electrode.h"
#include "study/ground_memo.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace toft::answer {

namespace {

using rules::Verdict;
using study::BuildingEarthing;

std::string taken_of_circuits(const tables::Catalogue& catalogue) {
    const auto* air = tables::find_open_range(catalogue, "air_temperature");
    return fmt::format(
        "circuits: where the job does not say, their cable is clipped, single-phase in flat twin "
        "and earth, in air of {} °C, with no other loaded cable beside it, each behind an RCBO of "
        "30 mA, and a motor takes the usual multiple of its current to start: heat, insulation and "
        "bunching need thicker cable",
        significant(air ? air->high.value : 0, 3));
}

void add_once(std::vector<std::string>& words, const std::string& word) {
    if (std::find(words.begin(), words.end(), word) == words.end()) words.push_back(word);
}

std::string advice_line(const special::Advice& advice) {
    return fmt::format("{}: {} ({})", advice.about, advice.says,
                       advice.footing ? advice.footing->clause : "no clause");
}

class SchemeWriter {
public:
    SchemeWriter(const Question& q, const search::Contender& contender,
                 const study::Setting<Silent>& setting)
        : q_(q), c_(contender), s_(setting), recorded_(q, contender.scheme) {}

    SchemeAnswer write(int rank) {
        out_.rank = rank;
        out_.key = c_.key;
        out_.scheme = c_.scheme;
        out_.bill = recorded_.bill();
        out_.bought_before = q_.bought_before;
        out_.conditional_on = c_.conditional_on;
        add_unsaid(s_, out_.conditional_on);
        out_.headroom = c_.headroom;
        out_.governed_by = c_.governed_by ? c_.governed_by->name : "";
        out_.dependability = static_cast<int>(c_.dependability);
        out_.guard = guard_of(s_, c_.scheme);
        price();
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

    std::vector<const Citation*> citations() const { return recorded_.citations(); }

private:
    void price() {
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
                      recorded_.price_low().net.number(),
                      recorded_.price_high().net.number(),
                      recorded_.price_low().total.number(),
                      recorded_.price_high().total.number(),
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
        for (std::size_t i = 0; i < recorded_.findings().size(); ++i) {
            const auto& f = recorded_.findings()[i];
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
            const bool shown = !f.rule->only_cautions || std::isfinite(f.use.value);
            if (f.limited && shown) {
                a.value = f.value;
                a.limit = f.limit;
                a.use = f.use.value;
            }
            for (const Line& line : recorded_.lines_of(f)) {
                if (line.citation) add_once(a.basis, basis_word(line.citation->basis));
            }
            out_.findings.push_back(std::move(a));
        }
        for (std::size_t i = 0; i < recorded_.pairs().size(); ++i) {
            out_.selectivity.push_back(
                selectivity_answer(recorded_.pairs()[i], recorded_.protected_by(i)));
        }
    }

    void run() {
        out_.run = outline_of(s_, c_.scheme);
        if (out_.run.rcd) set_upstream_type(out_.guard, *out_.run.rcd);
    }

    double figure(const std::string& name) const { return recorded_.working(name)->value; }

    FaultRange fault_range(const std::string& name) const {
        return {figure("fault_currents_a." + name + ".smallest"),
                figure("fault_currents_a." + name + ".largest")};
    }

    void figures() {
        FigureAnswers& f = out_.run.figures;
        f.length_m = figure("length_m");
        f.design_current_a = figure("design_current_a");
        f.rating_a = figure("rating_a");
        f.governing_leg = recorded_.figures().governing_leg;
        for (const auto& leg : recorded_.setting().legs) {
            const auto& x = study::factors_of(leg, c_.scheme.stretch[leg.stretch]);
            f.factors.push_back(
                {x.ca.value, x.cg.value, x.ci.value, x.cs.value, x.cd.value, x.cc.value});
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
        f.longest_m = longest_by_rule(q_, c_.scheme);
    }

    TouchAnswer touch() const {
        const study::TouchFigures<Recording>& t = recorded_.touch();
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
        a.circuits = circuits_of(recorded_);
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
        for (const auto& f : recorded_.findings()) {
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
    Recorded recorded_;
    SchemeAnswer out_;
};

void append(std::vector<const Citation*>& to, const std::vector<const Citation*>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

void add_sources(const tables::Catalogue& catalogue, const std::vector<const Citation*>& citations,
                 std::vector<SourceAnswer>& sources) {
    for (const Citation* citation : citations) {
        const char* basis = basis_word(citation->basis);
        bool known = false;
        for (const SourceAnswer& s : sources) {
            known = known || (s.key == citation->source && s.basis == basis);
        }
        if (known) continue;
        std::string title;
        for (const tables::Source& source : catalogue.sources) {
            if (source.key == citation->source) title = source.title;
        }
        sources.push_back({citation->source, title, basis});
    }
}

}  // namespace

DroppedAnswer dropped_answer(const search::Dropped& d) {
    const std::string why = *d.says ? d.says : fmt::format("not so: {}", d.rule->title);
    DroppedAnswer a{d.rule->name, why, d.count, "", nearest_sentence(d), d.nearest_use};
    if (d.nearest) a.nearest_key = study::scheme_key(*d.nearest);
    return a;
}

study::RunAt run_at(const Question& question, int phases) {
    study::RunAt at{question.run, phases, question.memo};
    at.incoming = question.incoming;
    at.bonds_beyond = question.bonds_beyond;
    return at;
}

SchemeAnswer written(const Question& q, const search::Contender& contender,
                     const study::Setting<Silent>& setting, Citations& citations) {
    SchemeWriter writer(q, contender, setting);
    SchemeAnswer answer = writer.write(1);
    append(citations, writer.citations());
    append(citations, citations_of(answer.guard));
    return answer;
}

void add_assumed(const study::Setting<Silent>& setting, Answer& answer) {
    for (const std::string& line : setting.assumed) add_once(answer.assumed, line);
    if (!setting.circuits.judged.empty())
        add_once(answer.assumed, taken_of_circuits(*setting.catalogue));
    for (const std::string& line : setting.circuits.left_out) add_once(answer.assumed, line);
    for (const site::Leg& leg : setting.run->legs) {
        if (!site::buried(leg.method) || leg.surface) continue;
        add_once(
            answer.assumed,
            "what a trench is dug through is not stated: priced as lawn, the cheapest; a path, "
            "a drive or a road costs more");
    }
}

void add_left_out(const Question& q, Answer& answer) {
    const std::string words = price::left_out_words(q.book, q.catalogue);
    if (!words.empty()) add_once(answer.assumed, words);
}

void finish_sources(const Question& q, const Citations& citations, Answer& answer) {
    add_sources(q.catalogue, citations, answer.sources);
    std::sort(answer.sources.begin(), answer.sources.end(),
              [](const SourceAnswer& a, const SourceAnswer& b) {
                  return std::tie(a.key, a.basis) < std::tie(b.key, b.basis);
              });
}

void mark_least_over_years(const search::Result& found, Answer& answer) {
    const auto least = found.least_over_years;
    if (least && *least < answer.schemes.size()) answer.schemes[*least].over_years.least = true;
}

const study::Setting<Silent>& Searched::setting_of(const search::Contender& contender) const {
    const bool last = contender.scheme.phases == settings.back().phases;
    return last ? settings.back() : settings.front();
}

namespace {

void say_assumed(const Question& q, const Searched& searched, Answer& answer) {
    for (const auto& setting : searched.settings) {
        for (const std::string& line : setting.assumed) add_once(answer.assumed, line);
    }
    for (const auto& setting : searched.settings) {
        if (!setting.circuits.judged.empty())
            add_once(answer.assumed, taken_of_circuits(q.catalogue));
        for (const std::string& line : setting.circuits.left_out) add_once(answer.assumed, line);
    }
    add_left_out(q, answer);
    answer.assumed.insert(answer.assumed.end(), q.job.unused.begin(), q.job.unused.end());
}

void add_advice(const study::Setting<Silent>& setting, Citations& citations, Answer& answer) {
    answer.advice = special::advice_of(special::case_of(setting));
    for (const special::Advice& advice : answer.advice) {
        if (advice.footing) citations.push_back(advice.footing->citation);
    }
}

}  // namespace

Searched searched(const Question& q, const search::Options& options, Answer& answer) {
    answer.job = q.job.title;
    answer.edition = rules::edition();
    answer.data_version = q.catalogue.version;
    answer.cautions = standing_cautions(q.book);
    const double start = q.milliseconds ? q.milliseconds() : 0;
    Searched searched{search::search(q.catalogue, q.book, q.job, q.run, options), {}};
    const search::Result& found = searched.found;
    const double took = q.milliseconds ? q.milliseconds() - start : 0;
    answer.search = {found.candidates, found.evaluated,   found.set_aside,
                     found.sound,      found.conditional, took};
    answer.search.stopped = found.stopped;
    answer.search.proved = !found.stopped;
    Silent silent;
    for (const int phases : study::phase_choices(q.job, q.run)) {
        searched.settings.push_back(
            study::prepare(silent, q.catalogue, q.job, run_at(q, phases), {}));
    }
    answer.sound = found.any_sound() && searched.settings.front().unsaid.empty();
    if (!answer.sound) {
        answer.search.conditional += answer.search.sound;
        answer.search.sound = 0;
    }
    say_assumed(q, searched, answer);
    answer.demand =
        demand_of(found.contenders.empty() ? searched.settings.front()
                                           : searched.setting_of(found.contenders.front()));
    for (const search::Dropped& d : found.dropped) answer.dropped.push_back(dropped_answer(d));
    return searched;
}

Answer design(const Question& question) {
    if (question.job.runs.size() > 1) return design_tree(question);
    study::GroundMemo memo;
    Question q = question;
    if (!q.memo) q.memo = &memo;
    search::Options options = solve::options_for(*q.memo);
    options.all = q.all;
    if (q.go_on) options.go_on = [&q] { return q.go_on({}); };
    Answer answer;
    const Searched searched = answer::searched(q, options, answer);
    const search::Result& found = searched.found;
    Citations citations;
    int rank = 0;
    for (const search::Contender& contender : found.contenders) {
        if (q.most > 0 && answer.schemes.size() == q.most) break;
        answer.schemes.push_back(written(q, contender, searched.setting_of(contender), citations));
        answer.schemes.back().rank = ++rank;
    }
    mark_least_over_years(found, answer);
    answer.walks = walks_of(q.catalogue, q.job, q.memo);
    for (const walk::Walk& walk : answer.walks) append(citations, citations_of(walk));
    add_advice(searched.settings.back(), citations, answer);
    finish_sources(q, citations, answer);
    if (found.stopped) return answer;  // what hangs on open facts takes longer than the search
    const solve::RunSolver solver({q.catalogue, q.book}, q.job, found, *q.memo, options.go_on);
    answer.unknowns = unknowns_of(solver, found);
    return answer;
}

bool only_conditional(const Answer& answer) { return !answer.sound && !answer.schemes.empty(); }

}  // namespace toft::answer
