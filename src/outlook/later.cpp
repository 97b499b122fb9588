#include "outlook/later.h"

#include "answer/describe.h"
#include "answer/outline.h"
#include "base/root.h"
#include "solve/solve.h"
#include "study/ground_memo.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::outlook {

namespace {

using answer::brief_words;
using answer::Question;

constexpr double most_more = 10000;  ///< amperes
constexpr double least_more = 1e-6;

study::Setting<Silent> setting_of(const Question& q, const site::Job& job, int phases) {
    Silent silent;
    return study::prepare(silent, q.catalogue, job, study::RunAt{0, phases, q.memo}, {});
}

std::vector<std::string> failing(const study::Setting<Silent>& setting,
                                 const study::RunScheme& scheme) {
    std::vector<std::string> names;
    search::Evaluation e;
    search::evaluate(setting, scheme, e);
    for (const auto& f : e.findings) {
        const bool fails = f.verdict == rules::Verdict::fails && !f.rule->only_cautions;
        if (fails) names.emplace_back(f.rule->name);
    }
    return names;
}

/// The job with so many amperes more at the building, whatever they are for.
site::Job drawing_more(const site::Job& job, double more) {
    site::Job with = job;
    // What comes later counts in every scenario but that of today.
    if (study::wanted_scenario(job) == site::Scenario::today) {
        with.wishes.scenario = site::Scenario::likely;
    }
    site::Building& b = with.buildings[site::building_index(with, with.runs[0].to)];
    const Amperes before = b.future_load.known ? b.future_load.high : amperes(0);
    const Amperes total = before + amperes(more);
    b.future_load = {true, total, total, site::Standing::declared, site::Spread::even};
    return with;
}

void add_ceilings(const Question& q, const study::RunScheme& scheme, LaterAnswer& answer) {
    const auto& rules = rules::rulebook();
    const auto fails = [&](double more, std::size_t rule) {
        const site::Job with = drawing_more(q.job, more);
        return !search::surely_met(
            search::finding_of_one(setting_of(q, with, scheme.phases), scheme, rule));
    };
    const auto setting = setting_of(q, q.job, scheme.phases);
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (rules[i].info->only_cautions || !fails(most_more, i)) continue;
        const auto now = search::finding_of_one(setting, scheme, i);
        if (now.verdict != rules::Verdict::fails && !search::surely_met(now)) {
            answer.notes.push_back(fmt::format(
                "{} sets a limit that is not shown: it is passed already, or not all that counts "
                "is known (toft design says which).",
                rules[i].info->name));
            continue;
        }
        if (fails(least_more, i)) {
            answer.ceilings.push_back({rules[i].info->name, 0, 0});
            continue;
        }
        const double more =
            last_holding(least_more, most_more, [&](double x) { return !fails(x, i); });
        answer.ceilings.push_back(
            {rules[i].info->name, more, more * q.job.intake.u0.number() / 1000});
    }
    std::stable_sort(
        answer.ceilings.begin(), answer.ceilings.end(),
        [](const CeilingAnswer& a, const CeilingAnswer& b) { return a.more_a < b.more_a; });
}

/// The job with the run held to what is kept of it: its cables; device and where it is fed from.
site::Job held_to(const study::Setting<Silent>& setting, const site::Job& job,
                  const study::RunScheme& scheme, Keeps keeps) {
    site::Job held = job;
    site::Run& run = held.runs[0];
    for (std::size_t i = 0; i < run.legs.size(); ++i) {
        const tables::Cable& cable = *scheme.stretch[setting.legs[i].stretch].cable;
        run.legs[i].family = tables::family_word(cable.family);
        run.legs[i].cores = cable.cores;
        run.legs[i].live = cable.section;
    }
    run.phases = scheme.phases;
    if (keeps != Keeps::all) return held;
    run.device =
        site::NamedDevice{scheme.device->standard, scheme.device->curve, scheme.device->rating};
    run.fed_from = scheme.fed_from;
    return held;
}

struct Best {
    std::string key, words;
    std::optional<double> total;
};

Best best_of(const Question& q, const site::Job& job) {
    const solve::Solution found = solve::solve({q.catalogue, q.book}, job);
    if (!found.sound()) return {};
    const study::RunScheme& scheme = found.schemes.front();
    std::string words = job.runs.size() > 1
                            ? answer::whole_words({q.catalogue, q.book, job}, found)
                            : brief_words(setting_of(q, job, scheme.phases), scheme);
    return {found.key, std::move(words), found.total};
}

/// The price of all with so much of the run kept, where that is sound.
std::optional<double> keeping(const Question& q, const site::Job& with,
                              const study::RunScheme& scheme, Keeps keeps) {
    if (with.runs.size() == 1 && keeps == Keeps::all) {
        const auto found = solve::solve_as({q.catalogue, q.book}, with, {scheme});
        return found.sound() ? std::optional<double>(found.total) : std::nullopt;
    }
    const auto setting = setting_of(q, with, scheme.phases);
    return best_of(q, held_to(setting, with, scheme, keeps)).total;
}

/// What the head of the run cost, with tax.
double head_price(const Question& q, const study::RunScheme& scheme) {
    const auto setting = setting_of(q, q.job, scheme.phases);
    search::Evaluation e;
    search::evaluate(setting, scheme, e);
    Silent silent;
    const auto price =
        price::price_of(silent, q.book, setting, scheme, {{}, price::wired(e.figures)});
    return price.house_end.number() * price.total.number() / price.net.number();
}

/// What is kept, and what it then costs to add it to what was built.
void leave_until_later(const Question& q, const solve::Solution& base, const site::Job& with,
                       AdditionAnswer& a) {
    const study::RunScheme& scheme = base.schemes.front();
    if (a.fails.empty()) {
        if (const auto all = keeping(q, with, scheme, Keeps::all)) {
            a.keeps = Keeps::all;
            a.more_later = *all - base.total;
            return;
        }
        a.fails.emplace_back("the further run");
    }
    if (!a.more_now) return;
    a.more_later = base.total + *a.more_now;
    const auto cables = keeping(q, with, scheme, Keeps::cables);
    if (!cables) return;
    a.keeps = Keeps::cables;
    a.more_later = std::min(*a.more_later, *cables - base.total + head_price(q, scheme));
}

AdditionAnswer added(const Question& q, const solve::Solution& base,
                     const tables::AdditionRow& row) {
    AdditionAnswer a;
    a.key = row.key;
    a.says = row.says;
    a.load_w = row.load_w;
    a.length_m = row.length_m;
    a.basis = basis_word(row.citation->basis);
    const site::Job with = with_addition(q.catalogue, q.job, row);
    const study::RunScheme& scheme = base.schemes.front();
    a.fails = failing(setting_of(q, with, scheme.phases), scheme);
    Best best = best_of(q, with);
    if (best.total) {
        a.scheme_key = std::move(best.key);
        a.scheme = std::move(best.words);
        a.more_now = *best.total - base.total;
    }
    leave_until_later(q, base, with, a);
    return a;
}

std::vector<std::string> notes_of(const LaterAnswer& a) {
    if (a.scheme.empty()) {
        return {"Nothing is sound as the job stands, so nothing can be added to it."};
    }
    return {
        "Each addition is one alone, as the tables have it, on a line of its own; the job with it "
        "is solved anew, facts nobody gave at their worse end.",
        "Left until later: its own circuit or run where the run as built serves; with it another "
        "head where the cables do, the first head for nothing; else the whole run built again, "
        "and nothing of it used. Prices of today; digging up and making good what was finished is "
        "not in them.",
        "A charger is taken for a vehicle in the open, a second building as timber without metal. "
        "Earthing, notice to the network operator and isolation are looked at anew when it comes."};
}

}  // namespace

const char* keeps_word(Keeps keeps) {
    switch (keeps) {
        case Keeps::all:
            return "fits";
        case Keeps::cables:
            return "new head";
        case Keeps::nothing:
            break;
    }
    return "new run";
}

LaterAnswer later(const answer::Question& question) {
    study::GroundMemo memo;
    Question q = question;
    if (!q.memo) q.memo = &memo;
    LaterAnswer answer;
    answer.job = q.job.title;
    answer.cautions = answer::standing_cautions(q.book);
    const solve::Solution base = solve::solve({q.catalogue, q.book}, q.job);
    if (base.sound()) {
        const study::RunScheme& scheme = base.schemes.front();
        const auto setting = setting_of(q, q.job, scheme.phases);
        answer.scheme_key = base.key;
        answer.scheme = brief_words(setting, scheme);
        answer.total = base.total;
        answer.design_current_a = setting.ib.number();
        add_ceilings(q, scheme, answer);
        for (const tables::AdditionRow& row : q.catalogue.additions) {
            answer.additions.push_back(added(q, base, row));
        }
    }
    const std::vector<std::string> always = notes_of(answer);
    answer.notes.insert(answer.notes.end(), always.begin(), always.end());
    return answer;
}

}  // namespace toft::outlook
