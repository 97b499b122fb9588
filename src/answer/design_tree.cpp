#include "answer/demand.h"
#include "answer/describe.h"
#include "answer/design_parts.h"
#include "answer/unknowns.h"
#include "answer/whole_place.h"
#include "answer/why.h"
#include "base/text.h"
#include "base/together.h"
#include "site/built.h"
#include "site/built_words.h"
#include "study/ground_memo.h"
#include "study/path_load.h"
#include "tree/alternatives.h"
#include "tree/feeding.h"

#include <fmt/format.h>

#include <algorithm>
#include <deque>

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

/// A job as built, in which each building has one run to it.
struct Layout {
    Layout(const Question& q, site::Job built)
        : job(std::move(built)),
          at{q.catalogue, q.book, job, {}, q.memo},
          tree(tree::tree_of(at)) {}
    Layout(const Layout&) = delete;
    Layout& operator=(const Layout&) = delete;

    site::Job job;
    tree::Workplace at;
    tree::Tree tree;
};

/// All runs of a job designed at once.
class TreeWriter {
public:
    explicit TreeWriter(const Question& q) : q_(q), choice_(site::has_choice(q.job)) {}

    Answer write() {
        answer_.job = q_.job.title;
        answer_.edition = rules::edition();
        answer_.data_version = q_.catalogue.version;
        answer_.cautions = standing_cautions(q_.book);
        const double start = q_.milliseconds ? q_.milliseconds() : 0;
        const tree::Alternatives found = look();
        answer_.search.milliseconds = q_.milliseconds ? q_.milliseconds() - start : 0;
        for (const std::size_t i : tree::shown(found, q_.all ? found.ways.size() : most_shown())) {
            answer_.schemes.push_back(scheme(*found.ways[i].found, best()));
            answer_.schemes.back().over_years.least = sure_ && found.least_over_years == i;
        }
        show_other_feeds();
        settle_soundness();
        if (found.ways.empty() && !found.stopped) say_what_fell();
        about_the_place(found);
        finish_sources(q_, citations_, answer_);
        return std::move(answer_);
    }

private:
    /// What is sound however open facts turn out may still hang on what nobody said.
    void settle_soundness() {
        answer_.sound =
            sure_ && !answer_.schemes.empty() && answer_.schemes.front().conditional_on.empty();
        if (!sure_ || answer_.sound) return;
        answer_.search.conditional += answer_.search.sound;
        answer_.search.sound = 0;
    }

    /// At the worse end of every open fact; where nothing is sound there, at the better.
    tree::Alternatives look() {
        tree::Alternatives found = look_at({});
        sure_ = !found.ways.empty();
        count(found);
        if (sure_ || found.stopped) return found;
        study::Corner better;
        better.all = study::End::better;
        tree::Alternatives hoped = look_at(better);
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

    /// First which building feeds which, then what else there is with the same runs.
    tree::Alternatives look_at(const study::Corner& corner) {
        const tree::Asked asked = asking();
        if (!choice_) {
            if (layouts_.empty()) layouts_.emplace_back(q_, site::as_built(q_.job));
            const tree::Workplace at = at_corner(best(), corner);
            return tree::alternatives(at, best().tree, asked);
        }
        const tree::Workplace stated{q_.catalogue, q_.book, q_.job, corner, q_.memo};
        feedings_ = tree::feedings(stated, asked);
        layouts_.clear();
        for (const tree::Feeding& way : feedings_.ways) layouts_.emplace_back(q_, way.job);
        tree::Alternatives found;
        if (layouts_.empty()) {
            layouts_.emplace_back(q_, site::as_built(q_.job, tree::all_trees(q_.job, 1).front()));
        } else {
            const tree::Workplace at = at_corner(best(), corner);
            found = tree::alternatives(at, best().tree, asked, &feedings_.ways.front().best);
        }
        found.stopped = found.stopped || feedings_.stopped;
        found.cheapest.stopped = feedings_.stopped;
        found.cheapest.proved = feedings_.proved;
        found.cheapest.at_least = feedings_.at_least;
        found.cheapest.considered = feedings_.considered;
        found.cheapest.choices = feedings_.choices_of_runs;
        found.cheapest.rounds = feedings_.rounds;
        answer_.search.trees = feedings_.trees;
        return found;
    }

    static tree::Workplace at_corner(const Layout& layout, const study::Corner& corner) {
        return {layout.at.catalogue, layout.at.book, layout.job, corner, layout.at.memo};
    }

    /// As the cheapest way is built; where there is none, as some way might be.
    const Layout& best() const { return layouts_.front(); }

    /// Fewer the more runs each has.
    std::size_t most_shown() const {
        constexpr std::size_t most_parts = 48;
        const std::size_t usual = std::clamp(most_parts / best().tree.order.size(), std::size_t{2},
                                             search::Options().most);
        return q_.most > 0 ? std::min(q_.most, usual) : usual;
    }

    /// The cheapest with other runs, after what can be done with the same.
    void show_other_feeds() {
        if (!choice_) return;
        answer_.feeds = feeds_of(q_.job, feedings_);
        std::vector<int> ranks(layouts_.size(), 1);
        const std::size_t most = q_.most > 0 ? q_.most : answer_.schemes.size() + most_shown();
        for (std::size_t i = 1; i < feedings_.ways.size(); ++i) {
            ranks[i] = 0;
            if (!q_.all && answer_.schemes.size() >= most) continue;
            answer_.schemes.push_back(scheme(*feedings_.ways[i].best.found, layouts_[i]));
            ranks[i] = answer_.schemes.back().rank;
        }
        for (std::size_t c = 0; c < answer_.feeds.size(); ++c) {
            for (std::size_t k = 0; k < answer_.feeds[c].others.size(); ++k) {
                const tree::OtherFeed& other = feedings_.choices[c].others[k];
                if (other.found) answer_.feeds[c].others[k].rank = ranks[other.way];
            }
        }
    }

    void count(const tree::Alternatives& found) {
        SearchAnswer& s = answer_.search;
        s.candidates = found.cheapest.considered;
        s.evaluated = found.cheapest.choices;
        s.set_aside = s.candidates - s.evaluated;
        s.sound = sure_ ? static_cast<long>(found.ways.size()) : 0;
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

    SchemeAnswer scheme(const Followed& found, const Layout& layout) {
        // What a hoped-for way comes to is shown at the worse end, as everything else is.
        const Followed way =
            sure_ ? found : tree::follow(layout.at, layout.tree, schemes_of(found), {});
        std::vector<std::string> all =
            sure_ ? std::vector<std::string>() : hangs_on(schemes_of(found), layout);
        std::vector<SchemeAnswer> parts;
        std::vector<price::Item> bought;
        for (std::size_t i = 0; i < way.runs.size(); ++i) {
            parts.push_back(part(way.runs[i], {layout.tree.order[i].run, bought}, layout));
            add_new(all, parts.back().conditional_on);
            add_new(bought, way.runs[i].judged.once);
        }
        for (SchemeAnswer& part : parts) part.conditional_on = all;
        SchemeAnswer whole = parts.front();
        whole.further.assign(parts.begin() + 1, parts.end());
        together(way, layout, whole);
        return whole;
    }

    /// Place of a run in the job, and what runs before it buy once for the whole place.
    struct After {
        std::size_t run;
        const std::vector<price::Item>& bought;
    };

    SchemeAnswer part(const FollowedRun& run, const After& after, const Layout& layout) {
        Question of_run{q_.catalogue,    q_.book, layout.job, q_.all,
                        q_.milliseconds, q_.memo, after.run};
        of_run.bought_before = after.bought;
        of_run.incoming = run.behind ? &run.incoming : nullptr;
        of_run.bonds_beyond = run.bonds_beyond;
        Silent silent;
        const auto setting =
            study::prepare(silent, q_.catalogue, layout.job, run_at(of_run, run.scheme.phases), {});
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
    void together(const Followed& way, const Layout& layout, SchemeAnswer& whole) {
        whole.rank = static_cast<int>(answer_.schemes.size()) + 1;
        whole.headroom = way.headroom;
        whole.governed_by =
            way.governed_by
                ? fmt::format("{} of {}", way.governed_by->name,
                              layout.job.runs[layout.tree.order[way.governing_run].run].id)
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
            whole.over_years.lost_kwh_year += other.over_years.lost_kwh_year;
            whole.over_years.lost += other.over_years.lost;
            whole.over_years.total += other.over_years.total;
            add_new(whole.house_work, other.house_work);
        }
        if (on_one_electrode(way)) {
            whole.cautions.push_back(
                "one building's electrode is the earth of every building fed through it: should it "
                "be lost, all of them lose their earth, so its test point stays within reach and "
                "it is tested every year");
        }
        whole.trenches = trenches_of(layout.job);
        if (!choice_) return;
        add_found_unbuilt(q_.catalogue, q_.job, layout.job, whole);
        say_what_feeds_what(layout, whole);
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

    void say_what_feeds_what(const Layout& layout, SchemeAnswer& whole) const {
        whole.feeds = site::fed_words(layout.job);
        whole.not_built = site::not_built(q_.job, layout.job);
        whole.sentence = fmt::format("Feed {}. {}", whole.feeds, whole.sentence);
        if (&layout != &best()) whole.words = whole.feeds + "; " + whole.words;
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

    /// All are whole pennies, and so is their sum.
    static void add_price(PriceAnswer& sum, const PriceAnswer& more) {
        const auto add = [](double& to, double amount) {
            to = penny(pounds(to + amount)).number();
        };
        add(sum.house_end, more.house_end);
        add(sum.run, more.run);
        add(sum.ground, more.ground);
        add(sum.far_end, more.far_end);
        add(sum.test_and_paper, more.test_and_paper);
        add(sum.put_right_first, more.put_right_first);
        add(sum.net, more.net);
        add(sum.vat, more.vat);
        add(sum.total, more.total);
        add(sum.net_low, more.net_low);
        add(sum.net_high, more.net_high);
        add(sum.total_low, more.total_low);
        add(sum.total_high, more.total_high);
    }

    /// Facts that at their worse end alone break the way, all others at their better.
    static std::vector<std::string> hangs_on(const std::vector<study::RunScheme>& schemes,
                                             const Layout& layout) {
        std::vector<std::string> facts;
        for (const study::OpenFact& fact : open_facts(layout)) {
            tree::Workplace at = layout.at;
            at.corner.all = study::End::better;
            at.corner.except.emplace_back(fact.pointer, study::End::worse);
            if (!tree::follow(at, layout.tree, schemes, {}).sound) facts.push_back(fact.pointer);
        }
        if (!facts.empty()) return facts;
        for (const study::OpenFact& fact : open_facts(layout)) facts.push_back(fact.pointer);
        return facts;
    }

    /// Of all runs, each once.
    static std::vector<study::OpenFact> open_facts(const Layout& layout) {
        std::vector<study::OpenFact> all;
        for (const tree::Place& place : layout.tree.order) {
            const tree::RunJudge judge(layout.at, place.run, 0, nullptr);
            for (const study::OpenFact& fact : judge.setting().open) {
                const bool known = std::any_of(all.begin(), all.end(), [&](const auto& other) {
                    return other.pointer == fact.pointer;
                });
                if (!known) all.push_back(fact);
            }
        }
        return all;
    }

    /// Each is looked at where that is cheap: where none of them matters. Else `toft ask` does.
    void about_open_facts(bool in_short) {
        if (open_facts(best()).empty()) return;
        if (in_short) {
            answer_.assumed.push_back("what the survey leaves open is taken at its worse end");
            return;
        }
        Question of_best{q_.catalogue, q_.book, best().job};
        of_best.memo = q_.memo;
        const solve::TreeSolver solver({q_.catalogue, q_.book}, best().job, *q_.memo);
        answer_.assumed.push_back(open_in_short(solver));
        if (none_matters(solver)) answer_.unknowns = unknowns_of_tree(of_best, solver);
    }

    /// Each run as though it left the house: what falls even there is what to change.
    void say_what_fell() {
        if (choice_) {
            for (std::size_t run = 0; run < q_.job.runs.size(); ++run) {
                say_what_fell(site::as_built(q_.job, {run}), 0);
            }
            return;
        }
        for (const tree::Place& place : best().tree.order) say_what_fell(best().job, place.run);
    }

    void say_what_fell(const site::Job& job, std::size_t run) {
        search::Options options;
        options.memo = q_.memo;
        const search::Result alone = search::search(q_.catalogue, q_.book, job, run, options);
        if (!alone.contenders.empty()) return;
        for (const search::Dropped& dropped : alone.dropped) {
            DroppedAnswer said = dropped_answer(dropped);
            said.title = job.runs[run].id + ": " + said.title;
            answer_.dropped.push_back(std::move(said));
        }
    }

    void about_the_place(const tree::Alternatives& found) {
        const tree::Tree& tree = best().tree;
        const std::size_t first = tree.order.front().run;
        const int phases = found.ways.empty() ? 0 : found.ways.front().found->runs[0].scheme.phases;
        const tree::RunJudge judge(best().at, first, phases, nullptr);
        answer_.demand = demand_of(judge.setting());
        answer_.assumed = assumed_.lines(tree.order.size());
        add_new(answer_.assumed, about_lines(best().job));
        add_left_out(q_, answer_);
        if (!q_.in_short) about_earth(found);
        about_open_facts(found.stopped || q_.in_short);
        add_new(answer_.assumed, q_.job.unused);
    }

    void about_earth(const tree::Alternatives& found) {
        const tree::Tree& tree = best().tree;
        const WholePlace place{best().at, tree,
                               found.ways.empty() ? nullptr : &*found.ways.front().found};
        answer_.walks = walks_for(place);
        for (const walk::Walk& walk : answer_.walks) add(citations_of(walk));
        answer_.advice = advice_for(place);
        for (const special::Advice& advice : answer_.advice) {
            if (advice.footing) citations_.push_back(advice.footing->citation);
        }
    }

    static std::string name_of(const site::Building& building) {
        return building.name.empty() ? building.id : building.name;
    }

    void add(const Citations& more) {
        citations_.insert(citations_.end(), more.begin(), more.end());
    }

    const Question& q_;
    bool sure_ = false;           ///< sound however what is open turns out
    bool choice_;                 ///< some building has several runs to it
    tree::Feedings feedings_;     ///< where there is a choice
    std::deque<Layout> layouts_;  ///< of the ways of `feedings_`; never empty once looked at
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

}  // namespace toft::answer
