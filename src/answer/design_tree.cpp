#include "answer/demand.h"
#include "answer/describe.h"
#include "answer/design_parts.h"
#include "answer/unknowns.h"
#include "answer/why.h"
#include "base/text.h"
#include "study/ground_memo.h"
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

void add_new(std::vector<TellAnswer>& to, const std::vector<TellAnswer>& more) {
    for (const TellAnswer& one : more) {
        const bool known = std::any_of(to.begin(), to.end(), [&](const TellAnswer& other) {
            return one.who == other.who && one.when == other.when && one.why == other.why;
        });
        if (!known) to.push_back(one);
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
        : q_(q),
          at_{q.catalogue, q.book, q.job, {}, q.memo},
          tree_(tree::tree_of(at_)),
          solver_({q.catalogue, q.book}, q.job, *q.memo) {}

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
        if (found.ways.empty()) say_what_fell();
        about_the_place(found);
        finish_sources(q_, citations_, answer_);
        return std::move(answer_);
    }

private:
    /// At the worse end of every open fact; where nothing is sound there, at the better.
    tree::Alternatives look() {
        tree::Alternatives found = tree::alternatives(at_, tree_, {});
        answer_.sound = !found.ways.empty();
        count(found);
        if (answer_.sound) return found;
        tree::Workplace better = at_;
        better.corner.all = study::End::better;
        tree::Alternatives hoped = tree::alternatives(better, tree_, {});
        answer_.search.conditional = static_cast<long>(hoped.ways.size());
        if (!hoped.ways.empty()) count(hoped);
        return hoped;
    }

    /// Fewer the more runs each has.
    std::size_t most_shown() const {
        constexpr std::size_t most_parts = 48;
        return std::clamp(most_parts / tree_.order.size(), std::size_t{2}, search::Options().most);
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
        solve::Solution hoped;
        hoped.schemes = schemes_of(found);
        const std::vector<std::string> hangs =
            answer_.sound ? std::vector<std::string>() : solver_.hangs_on(hoped);
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
        add_assumed(setting, answer_);
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
        if (on_one_electrode(way)) {
            whole.cautions.push_back(
                "one building's electrode is the earth of every building fed through it: should it "
                "be lost, all of them lose their earth, so its test point stays within reach and "
                "it is tested every year");
        }
        whole.sentence = named(whole, whole.sentence);
        whole.words = named(whole, whole.words);
        whole.key = whole.run.id + ":" + whole.key;
        for (SchemeAnswer& other : whole.further) {
            other.rank = whole.rank;
            whole.sentence += " " + named(other, other.sentence);
            whole.words += "; " + named(other, other.words);
            whole.key += "+" + other.run.id + ":" + other.key;
            add_price(whole.price, other.price);
            add_new(whole.house_work, other.house_work);
            add_new(whole.tell, other.tell);
            add_new(whole.needs_a_person, other.needs_a_person);
            add_new(whole.cautions, other.cautions);
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

    /// Each is looked at where that is cheap: where none of them matters. Else `toft ask` does.
    void about_open_facts() {
        if (solver_.open().empty()) return;
        answer_.assumed.push_back(open_in_short(solver_));
        if (none_matters(solver_)) answer_.unknowns = unknowns_of_tree(q_, solver_);
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
        for (const tree::Place& place : tree_.order) {
            const tree::RunJudge of_run(at_, place.run, 0, nullptr);
            for (special::Advice& advice : special::advice_of(special::case_of(of_run.setting()))) {
                if (advice.footing) citations_.push_back(advice.footing->citation);
                answer_.advice.push_back(std::move(advice));
            }
        }
        about_open_facts();
        add_new(answer_.assumed, q_.job.unused);
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
    solve::TreeSolver solver_;
    Citations citations_;
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
