#include "answer/answer.h"
#include "answer/demand.h"
#include "answer/describe.h"
#include "answer/design_parts.h"
#include "answer/unknowns.h"
#include "answer/why.h"
#include "base/text.h"
#include "price/offer.h"
#include "study/ground_memo.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace toft::answer {

namespace {

std::string taken_of_circuits(const tables::Catalogue& catalogue) {
    const auto* air = tables::find_open_range(catalogue, "air_temperature");
    return fmt::format(
        "circuits: where the job does not say, their cable is clipped, single-phase in flat twin "
        "and earth, in air of {} °C, with no other loaded cable beside it, each behind an RCBO of "
        "30 mA, and a motor takes the usual multiple of its current to start: heat, insulation and "
        "bunching need thicker cable",
        significant(air ? air->high.value : 0, 3));
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

void append(Citations& to, const Citations& more) { to.insert(to.end(), more.begin(), more.end()); }

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
