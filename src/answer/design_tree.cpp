#include "answer/demand.h"
#include "answer/describe.h"
#include "answer/design_parts.h"
#include "answer/why.h"
#include "base/text.h"
#include "base/together.h"
#include "study/ground_memo.h"
#include "study/path_load.h"
#include "tree/alternatives.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::answer {

namespace {

using rules::Verdict;
using tree::Followed;
using tree::FollowedRun;

template <class T>
void add_new(std::vector<T>& to, const std::vector<T>& more) {
    for (const T& one : more) {
        if (std::find(to.begin(), to.end(), one) == to.end()) to.push_back(one);
    }
}

search::Contender contender_of(const FollowedRun& run) {
    search::Contender c;
    c.scheme = run.scheme;
    c.key = study::scheme_key(run.scheme);
    c.price = run.judged.price;
    c.total = run.judged.price.total.number();
    c.headroom = run.evaluation.headroom;
    c.governed_by = run.evaluation.governed_by;
    for (std::size_t i = 0; i < c.verdicts.size(); ++i) {
        const Verdict verdict = run.evaluation.findings[i].verdict;
        c.verdicts[i] = verdict == Verdict::fails ? Verdict::not_known : verdict;
    }
    return c;
}

/// All runs of a job designed at once.
class TreeWriter {
public:
    explicit TreeWriter(const Question& q)
        : q_(q), at_{q.catalogue, q.book, q.job, {}, q.memo}, tree_(tree::tree_of(at_)) {}

    Answer write() {
        answer_.job = q_.job.title;
        answer_.edition = rules::edition();
        answer_.data_version = q_.catalogue.version;
        answer_.cautions = standing_cautions();
        const double start = q_.milliseconds ? q_.milliseconds() : 0;
        const tree::Alternatives found = look();
        answer_.search.milliseconds = q_.milliseconds ? q_.milliseconds() - start : 0;
        for (const tree::Best& way : found.ways) {
            if (!q_.all && answer_.schemes.size() == most_shown()) break;
            answer_.schemes.push_back(scheme(*way.found));
        }
        if (found.ways.empty() && !found.stopped) say_what_fell();
        about_the_place(found);
        finish_sources(q_, citations_, answer_);
        return std::move(answer_);
    }

private:
    /// At the worse end of every open fact; where nothing is sound there, at the better.
    tree::Alternatives look() {
        const tree::Asked asked = asking();
        tree::Alternatives found = tree::alternatives(at_, tree_, asked);
        answer_.sound = !found.ways.empty();
        count(found);
        if (answer_.sound || found.stopped) return found;
        tree::Workplace better = at_;
        better.corner.all = study::End::better;
        tree::Alternatives hoped = tree::alternatives(better, tree_, asked);
        answer_.search.conditional = static_cast<long>(hoped.ways.size());
        if (!hoped.ways.empty() || hoped.stopped) count(hoped);
        return hoped;
    }

    tree::Asked asking() const {
        tree::Asked asked;
        if (!q_.go_on) return asked;
        asked.go_on = [this](const tree::Progress& p) {
            const bool others = p.floor.headroom > 0 || p.floor.dependability > 0;
            return q_.go_on({p.rounds, p.price, p.at_least, others});
        };
        return asked;
    }

    /// Fewer the more runs each has.
    std::size_t most_shown() const {
        constexpr std::size_t most_parts = 48;
        const std::size_t usual =
            std::clamp(most_parts / tree_.order.size(), std::size_t{2}, search::Options().most);
        return q_.most > 0 ? std::min(q_.most, usual) : usual;
    }

    void count(const tree::Alternatives& found) {
        SearchAnswer& s = answer_.search;
        s.candidates = found.cheapest.considered;
        s.evaluated = found.cheapest.choices;
        s.set_aside = s.candidates - s.evaluated;
        s.sound = answer_.sound ? static_cast<long>(found.ways.size()) : 0;
        s.proved = found.cheapest.proved;
        s.at_least = found.cheapest.found ? found.cheapest.at_least : 0;
        s.rounds = found.cheapest.rounds;
        s.stopped = found.stopped;
    }

    std::vector<study::RunScheme> schemes_of(const Followed& way) const {
        std::vector<study::RunScheme> schemes;
        for (const FollowedRun& run : way.runs) schemes.push_back(run.scheme);
        return schemes;
    }

    SchemeAnswer scheme(const Followed& found) {
        // What a hoped-for way comes to is shown at the worse end, as everything else is.
        const Followed way =
            answer_.sound ? found : tree::follow(at_, tree_, schemes_of(found), {});
        const std::vector<std::string> hangs =
            answer_.sound ? std::vector<std::string>() : hangs_on(schemes_of(found));
        std::vector<SchemeAnswer> parts;
        for (std::size_t i = 0; i < way.runs.size(); ++i) {
            parts.push_back(part(way.runs[i], tree_.order[i].run));
            parts.back().conditional_on = hangs;
        }
        SchemeAnswer whole = parts.front();
        whole.further.assign(parts.begin() + 1, parts.end());
        together(way, whole);
        return whole;
    }

    SchemeAnswer part(const FollowedRun& run, std::size_t index) {
        Question of_run = q_;
        of_run.run = index;
        of_run.incoming = run.behind ? &run.incoming : nullptr;
        of_run.bonds_beyond = run.bonds_beyond;
        Silent silent;
        const auto setting =
            study::prepare(silent, q_.catalogue, q_.job, run_at(of_run, run.scheme.phases), {});
        Answer of_part;
        add_assumed(setting, of_part);
        for (const std::string& line : of_part.assumed) {
            assumed_.add(line, name_of(*setting.building_facts));
        }
        search::Contender contender = contender_of(run);
        contender.dependability = search::dependability(q_.catalogue, run.scheme);
        SchemeAnswer answer = written(of_run, contender, setting, citations_);
        answer.run_total = answer.price.total;
        answer.run_sentence = answer.sentence;
        answer.run_words = answer.words;
        if (run.behind) answer.incoming = run.incoming;
        answer.bonds_beyond = run.bonds_beyond;
        return answer;
    }

    /// What belongs to the whole.
    void together(const Followed& way, SchemeAnswer& whole) {
        whole.rank = static_cast<int>(answer_.schemes.size()) + 1;
        whole.headroom = way.headroom;
        whole.governed_by = way.governed_by
                                ? fmt::format("{} of {}", way.governed_by->name,
                                              q_.job.runs[tree_.order[way.governing_run].run].id)
                                : "";
        whole.dependability = static_cast<int>(way.dependability);
        whole.sentence = named(whole, whole.sentence);
        whole.words = named(whole, whole.words);
        whole.key = whole.run.id + ":" + whole.key;
        told_together(whole);
        for (SchemeAnswer& other : whole.further) {
            other.rank = whole.rank;
            whole.sentence += " " + named(other, other.sentence);
            whole.words += "; " + named(other, other.words);
            whole.key += "+" + other.run.id + ":" + other.key;
            add_price(whole.price, other.price);
            add_new(whole.house_work, other.house_work);
        }
        if (on_one_electrode(way)) {
            whole.cautions.push_back(
                "one building's electrode is the earth of every building fed through it: should it "
                "be lost, all of them lose their earth, so its test point stays within reach and "
                "it is tested every year");
        }
    }

    /// What goes for some buildings only is said of those.
    static void told_together(SchemeAnswer& whole) {
        Told cautions;
        Told persons;
        std::vector<Told> why;  // of each whom and when, in `to`
        std::vector<TellAnswer> to;
        const auto take = [&](const SchemeAnswer& part) {
            for (const auto& line : part.cautions) cautions.add(line, part.building.name);
            for (const auto& line : part.needs_a_person) persons.add(line, part.building.name);
            for (const TellAnswer& one : part.tell) {
                std::size_t i = 0;
                while (i < to.size() && (to[i].who != one.who || to[i].when != one.when)) ++i;
                if (i == to.size()) {
                    to.push_back(one);
                    why.emplace_back();
                }
                why[i].add(one.why, part.building.name);
            }
        };
        take(whole);
        for (const SchemeAnswer& other : whole.further) take(other);
        const std::size_t parts = whole.further.size() + 1;
        whole.cautions = cautions.lines(parts);
        whole.needs_a_person = persons.lines(parts);
        whole.tell.clear();
        for (std::size_t i = 0; i < to.size(); ++i) {
            for (const std::string& line : why[i].lines(parts)) {
                whole.tell.push_back({to[i].who, to[i].when, line});
            }
        }
    }

    /// Some building hangs on the electrode of one before it.
    static bool on_one_electrode(const Followed& way) {
        return std::any_of(way.runs.begin(), way.runs.end(), [](const FollowedRun& run) {
            return run.behind && run.incoming.island &&
                   run.scheme.earthing != study::BuildingEarthing::own_electrode;
        });
    }

    static std::string named(const SchemeAnswer& part, const std::string& said) {
        return part.run.id + ": " + said;
    }

    static void add_price(PriceAnswer& sum, const PriceAnswer& more) {
        sum.house_end += more.house_end;
        sum.run += more.run;
        sum.ground += more.ground;
        sum.far_end += more.far_end;
        sum.test_and_paper += more.test_and_paper;
        sum.put_right_first += more.put_right_first;
        sum.net += more.net;
        sum.vat += more.vat;
        sum.total += more.total;
    }

    /// Facts that at their worse end alone break the way, all others at their better.
    std::vector<std::string> hangs_on(const std::vector<study::RunScheme>& schemes) {
        std::vector<std::string> facts;
        for (const study::OpenFact& fact : open_facts()) {
            tree::Workplace at = at_;
            at.corner.all = study::End::better;
            at.corner.except.emplace_back(fact.pointer, study::End::worse);
            if (!tree::follow(at, tree_, schemes, {}).sound) facts.push_back(fact.pointer);
        }
        if (!facts.empty()) return facts;
        for (const study::OpenFact& fact : open_facts()) facts.push_back(fact.pointer);
        return facts;
    }

    /// Of all runs, each once.
    std::vector<study::OpenFact> open_facts() const {
        std::vector<study::OpenFact> all;
        for (const tree::Place& place : tree_.order) {
            const tree::RunJudge judge(at_, place.run, 0, nullptr);
            for (const study::OpenFact& fact : judge.setting().open) {
                const bool known = std::any_of(all.begin(), all.end(), [&](const auto& other) {
                    return other.pointer == fact.pointer;
                });
                if (!known) all.push_back(fact);
            }
        }
        return all;
    }

    /// Each run as though it left the house: what falls even there is what to change.
    void say_what_fell() {
        for (const tree::Place& place : tree_.order) {
            search::Options options;
            options.memo = q_.memo;
            const search::Result alone =
                search::search(q_.catalogue, q_.book, q_.job, place.run, options);
            if (!alone.contenders.empty()) continue;
            for (const search::Dropped& dropped : alone.dropped) {
                DroppedAnswer said = dropped_answer(dropped);
                said.title = q_.job.runs[place.run].id + ": " + said.title;
                answer_.dropped.push_back(std::move(said));
            }
        }
    }

    void about_the_place(const tree::Alternatives& found) {
        const std::size_t first = tree_.order.front().run;
        const int phases = found.ways.empty() ? 0 : found.ways.front().found->runs[0].scheme.phases;
        const tree::RunJudge judge(at_, first, phases, nullptr);
        answer_.demand = demand_of(judge.setting());
        answer_.walks = walks(found);
        for (const walk::Walk& walk : answer_.walks) add(citations_of(walk));
        advise(found);
        answer_.assumed = assumed_.lines(tree_.order.size());
        say_of_lines();
        answer_.assumed.push_back(
            "what the survey leaves open is taken at its worse end; which of it matters is not "
            "worked out for several runs together");
        add_new(answer_.assumed, q_.job.unused);
    }

    static std::string name_of(const site::Building& building) {
        return building.name.empty() ? building.id : building.name;
    }

    /// The same advice to several buildings is given once.
    void advise(const tree::Alternatives& found) {
        std::vector<std::vector<std::string>> names;
        for (std::size_t i = 0; i < tree_.order.size(); ++i) {
            const bool behind = tree_.order[i].parent != tree::from_house && !found.ways.empty();
            const tree::RunJudge of_run(
                at_, tree_.order[i].run, 0,
                behind ? &found.ways.front().found->runs[i].incoming : nullptr);
            for (special::Advice& advice : special::advice_of(special::case_of(of_run.setting()))) {
                const auto same = [&](const special::Advice& other) {
                    return other.about == advice.about && other.asks == advice.asks &&
                           other.says == advice.says;
                };
                auto& all = answer_.advice;
                const auto at = static_cast<std::size_t>(
                    std::find_if(all.begin(), all.end(), same) - all.begin());
                if (at == all.size()) {
                    if (advice.footing) citations_.push_back(advice.footing->citation);
                    all.push_back(std::move(advice));
                    names.emplace_back();
                }
                names[at].push_back(name_of(*of_run.setting().building_facts));
            }
        }
        for (std::size_t i = 0; i < names.size(); ++i) {
            if (names[i].size() == tree_.order.size()) continue;
            answer_.advice[i].about += ", " + names_together(names[i]);
        }
    }

    void say_of_lines() {
        if (q_.job.intake.phases != 3) return;
        long three = 0;
        for (std::size_t i = 0; i < q_.job.runs.size(); ++i) {
            three += study::phases_in_tree(q_.job, i) == 3 ? 1 : 0;
        }
        if (three < static_cast<long>(q_.job.runs.size())) {
            answer_.assumed.push_back(
                "runs of one phase are put on the lines that each run names, so that the runs load "
                "the lines evenly; what the house draws on each line is not counted in that: look, "
                "and turn the lines if one is loaded more");
        }
        if (three > 1) {
            answer_.assumed.push_back(
                "in every building on three phases its circuits of one phase are put on L1, L2, L3 "
                "in the same order, so L1 carries the most of all: turning the lines from one "
                "building to the next loads them more evenly");
        }
    }

    /// How each building should be earthed, argued from what the first way leaves at the board that
    /// feeds it; without a way, for the runs from the house alone.
    std::vector<walk::Walk> walks(const tree::Alternatives& found) {
        std::vector<walk::Walk> all;
        Silent silent;
        for (std::size_t i = 0; i < tree_.order.size(); ++i) {
            const bool behind = tree_.order[i].parent != tree::from_house;
            if (behind && found.ways.empty()) continue;
            study::RunAt at{tree_.order[i].run, 0, q_.memo};
            if (behind) at.incoming = &found.ways.front().found->runs[i].incoming;
            all.push_back(walk::walk(study::prepare(silent, q_.catalogue, q_.job, at, {})));
        }
        return all;
    }

    void add(const Citations& more) {
        citations_.insert(citations_.end(), more.begin(), more.end());
    }

    const Question& q_;
    tree::Workplace at_;
    tree::Tree tree_;
    Citations citations_;
    Told assumed_;
    Answer answer_;
};

}  // namespace

Answer design_tree(const Question& question) {
    study::GroundMemo memo;
    Question q = question;
    if (!q.memo) q.memo = &memo;
    return TreeWriter(q).write();
}

site::Job seen_from(const site::Job& job, const std::string& run) {
    site::Job seen = job;
    std::stable_partition(seen.runs.begin(), seen.runs.end(),
                          [&](const site::Run& other) { return other.id == run; });
    return seen;
}

Answer for_run(const Answer& answer, const std::string& run) {
    Answer of_run = answer;
    of_run.schemes.clear();
    for (const SchemeAnswer& scheme : answer.schemes) {
        std::vector<SchemeAnswer> parts{scheme};
        parts.insert(parts.end(), scheme.further.begin(), scheme.further.end());
        for (SchemeAnswer& part : parts) {
            if (part.run.id != run) continue;
            part.further.clear();
            part.sentence = part.run_sentence;
            part.words = part.run_words;
            of_run.schemes.push_back(std::move(part));
        }
    }
    return of_run;
}

}  // namespace toft::answer
