#include "solve/solver.h"

#include "search/keep.h"
#include "study/ground_memo.h"

#include <algorithm>

namespace toft::solve {

namespace {

using rules::rule_count;
using study::Setting;

/// Sums of money that differ by less are told apart by nothing but rounding.
constexpr double rounding = 1e-6;

const Setting<Silent>& with_phases(const std::vector<Setting<Silent>>& settings, int phases) {
    for (const Setting<Silent>& s : settings) {
        if (s.phases == phases) return s;
    }
    return settings.front();
}

/// One scheme in one setting.
struct Judgement {
    study::Figures<Silent> figures;
    std::array<rules::Finding<Silent>, rule_count> findings;
    bool sound = false;
};

/// Judges rule by rule; with `to_the_end` also past the first that fails.
void judge(const Setting<Silent>& setting, const study::RunScheme& scheme, bool to_the_end,
           Judgement& out) {
    Silent silent;
    out.figures.done = study::Stage::none;
    out.sound = true;
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rule_count; ++i) {
        out.findings[i] = {};
        if (rules[i].info->only_cautions) continue;
        study::work_out(silent, setting, scheme, rules[i].info->needs, out.figures);
        out.findings[i] = rules[i].judge(silent, rules::Case<Silent>{setting, scheme, out.figures});
        if (out.findings[i].verdict != rules::Verdict::fails) continue;
        out.sound = false;
        if (!to_the_end) return;
    }
}

double total_of(const price::Book& book, const Setting<Silent>& setting,
                const study::RunScheme& scheme, const Judgement& judged) {
    std::vector<price::Item> remedies;
    for (const auto& finding : judged.findings) {
        bool found = false;
        const price::Item item = price::item_of(finding.remedy, found);
        if (found) remedies.push_back(item);
    }
    Silent silent;
    return price::price_of(silent, book, setting, scheme,
                           {std::move(remedies), price::wired(judged.figures)})
        .total.number();
}

double least_price(const search::Possible& p) { return std::min(p.span.near_low, p.span.far_low); }

Solution solution_of(const search::Sound& best) { return {best, study::scheme_key(best.scheme)}; }

}  // namespace

Solution solve(const Means& means, const site::Job& job) {
    search::Options options;
    options.first_only = true;
    const search::Result found = search::search(means.catalogue, means.book, job, 0, options);
    if (!found.any_sound()) return {};
    return solution_of(found.contenders.front());
}

search::Options options_for(study::GroundMemo& memo) {
    search::Options options;
    options.possible = true;
    options.memo = &memo;
    return options;
}

Solver::Solver(const Means& means, const site::Job& job, const search::Result& found,
               study::GroundMemo& memo)
    : means_(means),
      job_(job),
      memo_(memo),
      worse_(settings_at({})),
      all_possible_(found.all_possible),
      possible_(found.possible) {
    for (const Setting<Silent>& s : worse_) {
        for (const study::OpenFact& fact : s.open) {
            const bool known =
                std::any_of(open_.begin(), open_.end(), [&](const study::OpenFact& other) {
                    return other.pointer == fact.pointer;
                });
            if (!known) open_.push_back(fact);
        }
    }
    if (found.any_sound()) stands_ = solution_of(found.contenders.front());
    const bool by_rank = job.wishes.prefer == site::Prefer::dependability;
    std::stable_sort(possible_.begin(), possible_.end(),
                     [by_rank](const search::Possible& a, const search::Possible& b) {
                         if (by_rank && a.dependability != b.dependability) {
                             return a.dependability > b.dependability;
                         }
                         return least_price(a) < least_price(b);
                     });
}

std::vector<Setting<Silent>> Solver::settings_at(const study::Corner& corner) const {
    Silent silent;
    std::vector<Setting<Silent>> settings;
    for (const int phases : study::phase_choices(job_, 0)) {
        settings.push_back(study::prepare(silent, means_.catalogue, job_,
                                          study::RunAt{0, phases, &memo_}, corner));
    }
    return settings;
}

const Setting<Silent>& Solver::setting(int phases) const { return with_phases(worse_, phases); }

Solution Solver::at(const study::Corner& corner) const {
    return all_possible_ ? judged(corner) : searched(corner);
}

Solution Solver::searched(const study::Corner& corner) const {
    search::Options options;
    options.first_only = true;
    options.memo = &memo_;
    options.corner = corner;
    // With every fact named none is left to turn out well, and no scheme is kept for that.
    for (const study::OpenFact& fact : open_) {
        options.corner.except.emplace_back(fact.pointer, corner.at(fact.pointer));
    }
    const search::Result found =
        search::search(means_.catalogue, means_.book, job_, 0, options);
    if (!found.any_sound()) return {};
    return solution_of(found.contenders.front());
}

Solution Solver::judged(const study::Corner& corner) const {
    const auto settings = settings_at(corner);
    const site::Prefer prefer = job_.wishes.prefer;
    Judgement judgement;
    std::optional<search::Sound> best;
    for (const search::Possible& p : possible_) {
        const bool as_dependable = !best || prefer != site::Prefer::dependability ||
                                   p.dependability == best->dependability;
        if (best && (!as_dependable || least_price(p) > best->total + rounding)) break;
        const Setting<Silent>& setting = with_phases(settings, p.scheme.phases);
        judge(setting, p.scheme, false, judgement);
        if (!judgement.sound) continue;
        search::Sound s = p;
        s.total = total_of(means_.book, setting, p.scheme, judgement);
        s.headroom = 1;
        s.governed_by = nullptr;
        for (std::size_t i = 0; i < rule_count; ++i) {
            s.verdicts[i] = judgement.findings[i].verdict;
            if (judgement.findings[i].rule) {
                search::count_headroom(judgement.findings[i], s.headroom, s.governed_by);
            }
        }
        if (!best || search::comes_before(s, *best, prefer)) best = s;
    }
    return best ? solution_of(*best) : Solution{};
}

double Solver::price_at(const study::Corner& corner, const study::RunScheme& scheme) const {
    const auto settings = settings_at(corner);
    const Setting<Silent>& setting = with_phases(settings, scheme.phases);
    Judgement judgement;
    judge(setting, scheme, true, judgement);
    return total_of(means_.book, setting, scheme, judgement);
}

}  // namespace toft::solve
