#include "solve/run_solver.h"

#include "search/keep.h"
#include "study/ground_memo.h"

#include <algorithm>

namespace toft::solve {

namespace {

using rules::rule_count;
using study::End;
using study::Setting;

/// Tax is rounded by half a penny at the most.
constexpr double rounding = 0.005 + 1e-6;

const Setting<Silent>& with_phases(const std::vector<Setting<Silent>>& settings, int phases) {
    for (const Setting<Silent>& s : settings) {
        if (s.phases == phases) return s;
    }
    return settings.front();
}

/// One scheme with the facts at one end, or each rule at the kindest of several.
struct Judgement {
    std::vector<study::Figures<Silent>> figures;              ///< by end
    std::array<rules::Finding<Silent>, rule_count> findings;  ///< at the first end
    bool sound = false;
};

/// Judges rule by rule; with `to_the_end` also past the first that fails.
void judge(const std::vector<const Setting<Silent>*>& ends, const study::RunScheme& scheme,
           bool to_the_end, Judgement& out) {
    Silent silent;
    out.figures.resize(ends.size());
    for (auto& figures : out.figures) figures.done = study::Stage::none;
    out.sound = true;
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rule_count; ++i) {
        out.findings[i] = {};
        bool met = rules[i].info->only_cautions;
        for (std::size_t e = 0; e < ends.size() && !met; ++e) {
            study::work_out(silent, *ends[e], scheme, rules[i].info->needs, out.figures[e]);
            const auto finding =
                rules[i].judge(silent, rules::Case<Silent>{*ends[e], scheme, out.figures[e]});
            if (e == 0) out.findings[i] = finding;
            met = finding.verdict != rules::Verdict::fails;
        }
        out.sound = out.sound && met;
        if (!out.sound && !to_the_end) return;
    }
}

double total_of(const price::Book& book, const Setting<Silent>& setting,
                const study::RunScheme& scheme, const Judgement& judged) {
    std::vector<price::Item> remedies;
    for (const auto& finding : judged.findings) search::add_remedy(finding, remedies);
    Silent silent;
    return price::price_of(silent, book, setting, scheme,
                           {std::move(remedies), price::wired(judged.figures.front())})
        .total.number();
}

/// Of schemes equal in all else the first by key.
bool before(search::Sound a, search::Sound b, site::Prefer prefer) {
    a.order = b.order = 0;
    if (search::comes_before(a, b, prefer)) return true;
    if (search::comes_before(b, a, prefer)) return false;
    return study::scheme_key(a.scheme) < study::scheme_key(b.scheme);
}

/// A whole search is quicker than more judgements one by one.
constexpr std::size_t most_tried = 3000;

/// Price and headroom of a scheme as it was judged.
void weigh_in(const price::Book& book, const Setting<Silent>& setting, const Judgement& judged,
              search::Sound& s) {
    s.total = total_of(book, setting, s.scheme, judged);
    s.headroom = 1;
    s.governed_by = nullptr;
    for (std::size_t i = 0; i < rule_count; ++i) {
        s.verdicts[i] = judged.findings[i].verdict;
        if (judged.findings[i].rule) {
            search::count_headroom(judged.findings[i], s.headroom, s.governed_by);
        }
    }
}

double least_price(const search::Possible& p) { return std::min(p.span.near_low, p.span.far_low); }

void sort_by_promise(std::vector<search::Possible>& all, site::Prefer prefer) {
    const bool by_rank = prefer == site::Prefer::dependability;
    std::stable_sort(all.begin(), all.end(),
                     [by_rank](const search::Possible& a, const search::Possible& b) {
                         if (by_rank && a.dependability != b.dependability) {
                             return a.dependability > b.dependability;
                         }
                         return least_price(a) < least_price(b);
                     });
}

Solution solution_of(const search::Sound& best) {
    return {{best.scheme},      study::scheme_key(best.scheme),
            best.total,         best.headroom,
            best.dependability, true};
}

}  // namespace

Solution solve_run(const Means& means, const site::Job& job) {
    study::GroundMemo memo;
    search::Options options;
    options.first_only = true;
    options.memo = &memo;
    Silent silent;
    // With every open fact named none is left to turn out well, and no scheme is kept for that.
    for (const int phases : study::phase_choices(job, 0)) {
        const auto setting = study::prepare(silent, means.catalogue, job,
                                            study::RunAt{0, phases, &memo}, study::Corner{});
        for (const study::OpenFact& fact : setting.open) {
            options.corner.except.emplace_back(fact.pointer, End::worse);
        }
    }
    const search::Result found = search::search(means.catalogue, means.book, job, 0, options);
    if (!found.any_sound()) return {};
    return solution_of(found.contenders.front());
}

Solution solve_run_as(const Means& means, const site::Job& job, const study::RunScheme& scheme) {
    Silent silent;
    const auto setting = study::prepare(silent, means.catalogue, job,
                                        study::RunAt{0, scheme.phases}, study::Corner{});
    Judgement judgement;
    judge({&setting}, scheme, false, judgement);
    if (!judgement.sound) return {};
    search::Sound s;
    s.scheme = scheme;
    weigh_in(means.book, setting, judgement, s);
    return solution_of(s);
}

search::Options options_for(study::GroundMemo& memo) {
    search::Options options;
    options.possible = true;
    options.memo = &memo;
    return options;
}

RunSolver::RunSolver(const Means& means, const site::Job& job, const search::Result& found,
                     study::GroundMemo& memo, std::function<bool()> go_on)
    : Solver(means, job),
      memo_(memo),
      go_on_(std::move(go_on)),
      worse_(settings_at({})),
      all_possible_(found.all_possible),
      possible_(found.possible) {
    for (const Setting<Silent>& s : worse_) add_open(s.open);
    if (found.any_sound()) stand(solution_of(found.contenders.front()));
    sort_by_promise(possible_, job.wishes.prefer);
}

RunSolver::Settings RunSolver::settings_at(const study::Corner& corner) const {
    Silent silent;
    Settings settings;
    for (const int phases : study::phase_choices(job(), 0)) {
        settings.push_back(study::prepare(silent, means().catalogue, job(),
                                          study::RunAt{0, phases, &memo_}, corner));
    }
    return settings;
}

const Setting<Silent>& RunSolver::setting(int phases) const { return with_phases(worse_, phases); }

bool RunSolver::stopped() const {
    stopped_ = stopped_ || (go_on_ && !go_on_());
    return stopped_;
}

Solution RunSolver::at(const study::Corner& corner) const {
    if (stopped()) return as_it_stands();
    if (all_possible_) {
        if (const auto first = first_of(possible_, {settings_at(corner)}, most_tried)) {
            return *first;
        }
    }
    const search::Result found = searched(corner, "");
    if (!found.any_sound()) return {};
    return solution_of(found.contenders.front());
}

Solution RunSolver::may_be(const study::Corner& corner, const std::string& pointer) const {
    if (stopped()) return as_it_stands();
    std::vector<Settings> ends;
    for (const End end : {End::better, End::low, End::high}) {
        study::Corner at = corner;
        at.except.insert(at.except.begin(), {pointer, end});
        ends.push_back(settings_at(at));
    }
    if (all_possible_) {
        if (const auto first = first_of(possible_, ends, most_tried)) return *first;
    }
    search::Result found = searched(corner, pointer);
    if (found.all_possible) {
        sort_by_promise(found.possible, job().wishes.prefer);
        return *first_of(found.possible, ends, found.possible.size());
    }
    study::Corner better = corner;
    better.except.insert(better.except.begin(), {pointer, End::better});
    return at(better);
}

/// With every fact but `open` named none is left to turn out well, and no scheme is kept for that.
search::Result RunSolver::searched(const study::Corner& corner,
                                   const std::string& left_open) const {
    search::Options options;
    options.first_only = true;
    options.possible = !left_open.empty();
    options.memo = &memo_;
    options.corner = corner;
    for (const study::OpenFact& fact : open()) {
        if (fact.pointer != left_open) {
            options.corner.except.emplace_back(fact.pointer, corner.at(fact.pointer));
        }
    }
    return search::search(means().catalogue, means().book, job(), 0, options);
}

std::optional<Solution> RunSolver::first_of(const std::vector<search::Possible>& all,
                                            const std::vector<Settings>& ends,
                                            std::size_t most) const {
    const site::Prefer prefer = job().wishes.prefer;
    Judgement judgement;
    std::optional<search::Sound> best;
    std::vector<const Setting<Silent>*> settings;
    std::size_t tried = 0;
    for (const search::Possible& p : all) {
        const bool as_dependable = !best || prefer != site::Prefer::dependability ||
                                   p.dependability == best->dependability;
        if (best && (!as_dependable || least_price(p) > best->total + rounding)) break;
        if (++tried > most) return std::nullopt;
        settings.clear();
        for (const Settings& end : ends) settings.push_back(&with_phases(end, p.scheme.phases));
        judge(settings, p.scheme, false, judgement);
        if (!judgement.sound) continue;
        search::Sound s = p;
        weigh_in(means().book, *settings.front(), judgement, s);
        if (!best || before(s, *best, prefer)) best = s;
    }
    return best ? solution_of(*best) : Solution{};
}

double RunSolver::price_at(const study::Corner& corner, const Solution& solution) const {
    const study::RunScheme& scheme = solution.schemes.front();
    const auto settings = settings_at(corner);
    const Setting<Silent>& setting = with_phases(settings, scheme.phases);
    Judgement judgement;
    judge({&setting}, scheme, true, judgement);
    return total_of(means().book, setting, scheme, judgement);
}

}  // namespace toft::solve
