#include "answer/selectivity.h"
#include "base/text.h"
#include "base/together.h"
#include "cli/layout.h"
#include "cli/screen.h"
#include "cli/what_to_do.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::cli {

namespace {

using answer::Answer;
using answer::FindingAnswer;
using answer::SchemeAnswer;
using rules::Verdict;

/// A verdict is a shape and a word.
std::string verdict_mark(Verdict verdict) {
    switch (verdict) {
        case Verdict::meets:
            return "● meets";
        case Verdict::caution:
            return "▲ caution";
        case Verdict::not_known:
            return "○ not known";
        case Verdict::fails:
            return "■ fails";
    }
    return "";
}

std::string heading(const char* text) { return fmt::format("\n{}\n", text); }

std::string percent(double share) {
    if (!std::isfinite(share)) return share > 0 ? "no end" : "none";
    return fmt::format("{} %", fixed(100 * share, 0));
}

std::string figures_of(const FindingAnswer& f) {
    if (!f.value || !f.limit) return "";
    const std::string unit = f.unit.empty() ? "" : " " + f.unit;
    return fmt::format("{}{} {} {}{}", significant(*f.value, 4), unit,
                       f.at_least ? "for at least" : "of at most", significant(*f.limit, 4), unit);
}

std::string money(double pounds) { return fmt::format("£{}", fixed(pounds, 0)); }

/// Where the book gives its prices a range.
std::string range_words(const answer::PriceAnswer& p) {
    if (p.total_low == p.total_high) return "";
    return fmt::format("; {} to {} with tax by the low and high ends of the book",
                       money(p.total_low), money(p.total_high));
}

std::string limits_part(const SchemeAnswer& s) {
    std::vector<const FindingAnswer*> graded;
    std::vector<const FindingAnswer*> others;
    for (const FindingAnswer& f : s.findings) {
        if (f.about_circuits && !f.use && f.verdict == Verdict::meets) continue;
        const bool told = f.verdict == Verdict::not_known && !f.says.empty();
        (f.use && !told ? graded : others).push_back(&f);
    }
    std::stable_sort(
        graded.begin(), graded.end(),
        [](const FindingAnswer* a, const FindingAnswer* b) { return *a->use > *b->use; });
    std::string text = heading("HOW CLOSE TO THE LIMITS");
    for (const FindingAnswer* f : graded) {
        text += fmt::format("  {} {} {:>6}  {}  {}\n", padded(f->rule, 21), bar(*f->use, 16),
                            percent(*f->use), padded(verdict_mark(f->verdict), 11), figures_of(*f));
    }
    for (const FindingAnswer* f : others) {
        text += wrapped(
            fmt::format("  {} {}  ", padded(f->rule, 21), padded(verdict_mark(f->verdict), 11)),
            f->says, 37);
    }
    return text;
}

std::string number(double x, const char* unit) {
    return fmt::format("{} {}", significant(x, 4), unit);
}

/// Volts against what, for how long, beside what the curve for dry places allows.
std::string touch_text(const answer::TouchAnswer& touch) {
    std::string text = number(touch.outbuilding_v, "V") + " against " + touch.against;
    text += touch.lasts_s ? ", " + number(*touch.lasts_s, "s") : std::string(", until found");
    if (touch.past_curve) return text + "; more than the curves know";
    const auto longest = [](const std::optional<double>& t) {
        return t ? number(*t, "s") : std::string("no time set");
    };
    return text + "; curves " + longest(touch.longest_dry_s) + " dry, " +
           longest(touch.longest_wet_s) + " wet";
}

std::string figures_part(const SchemeAnswer& s) {
    const auto& f = s.run.figures;
    std::string text = heading("FIGURES TO EXPECT");
    const auto line = [&](const char* what, const std::string& value) {
        text += fmt::format("  {} {}\n", padded(what, 46), value);
    };
    line("design current Ib, cable rating Iz",
         number(f.design_current_a, "A") + ", " + number(f.rating_a, "A") +
             fmt::format(" (leg {} decides)", f.governing_leg));
    line("voltage drop of the run", number(f.voltage_drop_percent, "%"));
    if (f.voltage_drop_total_percent > f.voltage_drop_percent) {
        line("  with the runs before it", number(f.voltage_drop_total_percent, "%"));
    }
    line("loop Zs at the far end, hot; largest allowed",
         number(f.loop_impedance_far_ohm, "Ω") + "; " + number(f.loop_impedance_limit_ohm, "Ω"));
    line("  largest a cold test may read", number(f.loop_impedance_test_limit_ohm, "Ω"));
    line("R1+R2 of the run at 20 °C", number(f.r1_plus_r2_20c_ohm, "Ω"));
    line("largest fault current, near and far end",
         number(f.fault_current_near_ka, "kA") + ", " + number(f.fault_current_far_ka, "kA"));
    line("smallest earth fault current, far end", number(f.earth_fault_current_far_a, "A"));
    line("disconnection by the device", f.disconnection_s
                                            ? number(*f.disconnection_s, "s")
                                            : std::string("does not operate: the RCD must"));
    text += wrapped("  touch voltage at the outbuilding while it clears: ", touch_text(f.touch), 4);
    text += wrapped("  meanwhile the house's earth stands over true ground by: ",
                    number(f.touch.house_v, "V"), 4);
    for (const auto& [rule, length] : f.longest_m) {
        line(fmt::format("longest run by {}", rule).c_str(), number(length, "m"));
    }
    return text;
}

std::string of_limit(const std::optional<answer::CircuitMatter>& m, const char* unit) {
    if (!m) return "";
    return fmt::format("{} of {} {}", significant(m->value, 3), significant(m->limit, 3), unit);
}

/// One circuit: what to fit, then what it comes to.
std::string circuit_text(const answer::CircuitAnswer& c) {
    std::string text = fmt::format(
        "{}{}{} {} A ({} mA type {}), {}/{} mm² {}, {} m", c.phases == 3 ? "three-pole " : "",
        c.device.kind == "RCBO" ? "RCBO " : "", c.device.curve, significant(c.device.rating_a, 3),
        significant(c.rcd_ma, 3), c.rcd_type, significant(c.live_mm2, 3), significant(c.cpc_mm2, 3),
        c.family, significant(c.length_m, 3));
    const auto add = [&](const char* what, const std::string& figures) {
        if (!figures.empty()) text += fmt::format("; {} {}", what, figures);
    };
    add("drop from the origin", of_limit(c.drop_percent, "%"));
    add("Zs", of_limit(c.loop_ohm, "Ω"));
    add("starting dip", of_limit(c.dip_percent, "%"));
    add("voltage rise", of_limit(c.rise_percent, "%"));
    add("R1+R2 cold", number(c.r1_plus_r2_20c_ohm, "Ω"));
    return text;
}

std::string circuits_part(const SchemeAnswer& s) {
    if (s.building.circuits.empty()) return "";
    std::string text = heading("CIRCUITS OUT THERE");
    for (const answer::CircuitAnswer& c : s.building.circuits) {
        text += wrapped(fmt::format("  {:>2}  ", c.number), c.name + ": " + circuit_text(c), 6);
    }
    return text;
}

const answer::LoadAnswer* load_of(const answer::BuildingDemandAnswer& b,
                                  const std::string& scenario) {
    for (const answer::LoadAnswer& load : b.scenarios) {
        if (load.scenario == scenario) return &load;
    }
    return nullptr;
}

/// "17.3 A", or each line: "20 A, 14 A, 14 A; neutral 6 A".
std::string load_text(const answer::LoadAnswer& load) {
    if (load.lines_a.size() == 1) return number(load.total_a, "A");
    std::string text;
    for (const double line : load.lines_a) text += (text.empty() ? "" : ", ") + number(line, "A");
    return text + "; neutral " + number(load.neutral_a, "A");
}

/// "42 A left, 24 A with the run", "20 A left, short by 8 A with the run".
std::string left_text(double left, double run) {
    const auto a = [](double amperes) { return significant(amperes, 3) + " A"; };
    const double after = left - run;
    std::string text = left < 0 ? "short by " + a(-left) : a(left) + " left";
    text +=
        after < 0 ? std::string(left < 0 ? ", by " : ", short by ") + a(-after) : ", " + a(after);
    return text + " with the run";
}

/// Buildings that draw the same, with it by scenario.
struct AlikeDemand {
    std::vector<std::string> names;
    std::vector<std::pair<std::string, std::string>> loads;
};

std::vector<AlikeDemand> alike_demands(const answer::DemandAnswer& d) {
    std::vector<AlikeDemand> all;
    for (const answer::BuildingDemandAnswer& b : d.buildings) {
        AlikeDemand one{{b.name}, {}};
        for (const char* scenario : {"today", "likely", "everything"}) {
            const auto* load = load_of(b, scenario);
            if (load) one.loads.emplace_back(scenario, load_text(*load));
        }
        if (one.loads.empty()) continue;
        const auto same = std::find_if(all.begin(), all.end(), [&](const AlikeDemand& other) {
            return other.loads == one.loads;
        });
        if (same == all.end()) {
            all.push_back(std::move(one));
        } else {
            same->names.push_back(b.name);
        }
    }
    return all;
}

std::string demand_part(const Answer& a) {
    const answer::DemandAnswer& d = a.demand;
    std::string text = heading("DEMAND, AND WHAT THE INTAKE HAS LEFT");
    const auto line = [&](const std::string& what, const std::string& value) {
        text += wrapped(fmt::format("  {} ", padded(what, 46)), value, 49);
    };
    for (const AlikeDemand& alike : alike_demands(d)) {
        const bool several = alike.names.size() > 1;
        if (several) {
            text += wrapped("  ", names_together(alike.names) + ", each of them:", 2);
        }
        for (const auto& [scenario, load] : alike.loads) {
            line(several ? "  " + scenario : alike.names.front() + ", " + scenario, load);
        }
    }
    for (const answer::HouseDemandAnswer& house : d.house) {
        line("house, " + house.way, number(house.demand_a, "A"));
        for (std::size_t i = 0; i < d.limits.size(); ++i) {
            const answer::LimitAnswer& limit = d.limits[i];
            line(fmt::format("  {}, {}{}", limit.part, number(limit.carries_a, "A"),
                             limit.known ? "" : " at the least"),
                 left_text(house.left_a[i], d.run_a));
        }
    }
    if (d.house.empty()) line("house", "not known: measure it, or list its circuits");
    line("network operator, of the load", d.notice);
    if (!a.schemes.empty()) return text;  // the reasons stand in its list of whom to tell
    for (const answer::NoticeAnswer& n : d.notices) {
        text += wrapped("  - ", fmt::format("{} the work: {}", n.when, n.why), 4);
    }
    return text;
}

std::string selectivity_part(const SchemeAnswer& s) {
    if (s.selectivity.empty()) return "";
    std::string text = heading("WHICH DEVICE OPENS");
    for (const auto& pair : s.selectivity) {
        text += wrapped("  ",
                        fmt::format("{} over {}: {}; {}", pair.upstream, pair.downstream,
                                    answer::selectivity_words(pair), pair.says),
                        6);
    }
    return text;
}

std::string lists_part(const SchemeAnswer& s) {
    std::string text;
    const auto list = [&](const char* title, const std::vector<std::string>& lines) {
        if (lines.empty()) return;
        text += heading(title);
        for (const std::string& line : lines) text += wrapped("  - ", line, 4);
    };
    list("FIRST, AT THE HOUSE", s.house_work);
    std::vector<std::string> tell;
    for (const auto& t : s.tell) tell.push_back(fmt::format("{}, {}: {}", t.who, t.when, t.why));
    list("TELL", tell);
    list("CAUTIONS FOR THIS SCHEME", s.cautions);
    list("NEEDS A PERSON", s.needs_a_person);
    return text;
}

std::string others_part(const Answer& a) {
    if (a.schemes.size() < 2) return "";
    std::string text = heading("WHAT ELSE WOULD DO");
    for (std::size_t i = 1; i < a.schemes.size(); ++i) {
        const SchemeAnswer& s = a.schemes[i];
        const std::string lead =
            fmt::format("  {:>2}  {:>7}  headroom {:>5}  ", s.rank, money(s.price.total),
                        s.conditional_on.empty() ? percent(s.headroom) : "?");
        text += wrapped(lead, s.words + (s.conditional_on.empty() ? "" : " (on conditions)"), 31);
    }
    return text;
}

std::string dropped_part(const Answer& a) {
    if (a.dropped.empty()) return "";
    std::string text = heading("WHAT FELL, AND WHY");
    for (const auto& d : a.dropped) {
        text +=
            wrapped(fmt::format("  {:>6}  {} ", d.count, padded(d.rule, 18)),
                    d.title + (d.nearest_says.empty() ? "" : "; nearest: " + d.nearest_says), 28);
    }
    return text;
}

std::string unknowns_part(const Answer& a) {
    std::string text;
    if (!a.unknowns.empty()) text += heading("NOT KNOWN, AND WHAT IT DOES");
    for (const auto& u : a.unknowns) {
        const std::string range =
            u.unit == "no or yes"
                ? "No or yes"
                : fmt::format("{} to {} {}", significant(u.low, 4), significant(u.high, 4), u.unit);
        const std::string hangs = u.hangs.empty() ? "" : ": " + u.hangs;
        text += wrapped(
            "  - ", fmt::format("{}: {}. {} ({}){}", u.effect, u.says, range, u.fact, hangs), 4);
    }
    if (!a.assumed.empty()) text += heading("TAKEN FOR GRANTED");
    for (const std::string& line : a.assumed) text += wrapped("  - ", line, 4);
    return text;
}

/// The first words of each piece of advice; the answer as JSON has what the rule asks besides.
std::string advice_part(const Answer& a) {
    if (a.advice.empty()) return "";
    std::string text = heading("SPECIAL THINGS");
    for (const auto& advice : a.advice) {
        text += wrapped("  - ",
                        fmt::format("{}: {} [{}]{}", advice.about, advice.says,
                                    advice.footing ? advice.footing->clause : "no clause",
                                    advice.needs_a_person ? " (needs a person)" : ""),
                        4);
    }
    return text;
}

/// What is told of a run; its name stands over it where there are several.
std::string run_parts(const SchemeAnswer& s, bool alone) {
    std::string text;
    if (!alone) {
        text = heading(fmt::format("RUN {} FROM {} TO {}, {} WITH TAX", s.run.id,
                                   s.run.feeder.empty() ? "THE HOUSE" : s.run.feeder,
                                   s.building.name, money(s.run_total))
                           .c_str());
    }
    return text + limits_part(s) + figures_part(s) + circuits_part(s) + selectivity_part(s);
}

/// What the cable loses over the years, and which scheme costs least with that.
std::string years_words(const Answer& a) {
    const answer::YearsAnswer& y = a.schemes.front().over_years;
    const bool several = !a.schemes.front().further.empty();
    std::string text = fmt::format(
        "{} up to {} kWh a year as heat: {} over {} years, {} with the price.",
        several ? "The cables lose" : "Its cable loses", significant(y.lost_kwh_year, 2),
        money(y.lost), significant(y.years, 3), money(y.total));
    if (y.least) return text + " Nothing sound costs less over those years.";
    for (const SchemeAnswer& s : a.schemes) {
        if (!s.over_years.least) continue;
        return text + fmt::format(" Over those years number {} costs least: {}.", s.rank,
                                  money(s.over_years.total));
    }
    return text;
}

/// What to ask, and where the answer goes in the job.
std::string question_of(const Answer& a, const std::string& fact) {
    for (const answer::UnknownAnswer& unknown : a.unknowns) {
        if (unknown.fact == fact && !unknown.question.empty()) {
            return fmt::format("{} ({})", unknown.question, fact);
        }
    }
    return fact;
}

/// What an answer is worth that was stopped on its way.
std::string stopped_words(const Answer& a) {
    const answer::SearchAnswer& s = a.search;
    if (s.rounds > 0 && s.proved) {
        return "Stopped: this is proved the cheapest, but there may be others with more headroom "
               "or more dependable than are listed.";
    }
    std::string text =
        "Not proved: stopped. This is the best found until then: every rule was asked of it, but "
        "there may be a cheaper way";
    if (s.at_least > 0) text += fmt::format(", though none below {}", money(s.at_least));
    return text + ".";
}

std::string recommended_part(const Answer& a) {
    if (a.schemes.empty() && a.search.stopped) {
        return heading("NOTHING SOUND WAS FOUND BEFORE IT WAS STOPPED") +
               wrapped("  ", "That is no proof that there is nothing: ask again, and let it go on.",
                       2);
    }
    if (a.schemes.empty() && !a.search.proved) {
        return heading("NOTHING SOUND WAS FOUND") +
               wrapped("  ",
                       "That is no proof that there is nothing: the runs hang on one another in "
                       "more ways than were tried. State a cable or a device for some of them, or "
                       "ask for fewer cable families, and ask again.",
                       2);
    }
    if (a.schemes.empty()) {
        return heading("NO SOUND SCHEME") +
               wrapped("  ",
                       "Nothing that can be bought and laid meets every rule. What fell, and the "
                       "nearest misses, are below: change what they name and ask again.",
                       2);
    }
    const SchemeAnswer& s = a.schemes.front();
    std::string text = heading(a.sound ? "DO THIS" : "ONLY IF FACTS TURN OUT WELL");
    if (a.search.stopped) text += wrapped("  ", stopped_words(a), 2);
    text += what_to_do(s);
    text += wrapped("  ",
                    fmt::format("{} with tax ({} before{}; price book: {}). Headroom {}, set by "
                                "{}.",
                                money(s.price.total), money(s.price.net), range_words(s.price),
                                s.price.basis, percent(s.headroom), s.governed_by),
                    2);
    text += wrapped("  ", years_words(a), 2);
    if (!s.conditional_on.empty()) {
        text += "  Find out first:\n";
        for (const std::string& fact : s.conditional_on) {
            text += wrapped("    ", question_of(a, fact), 4);
        }
    }
    text += run_parts(s, s.further.empty());
    for (const SchemeAnswer& part : s.further) text += run_parts(part, false);
    return text + lists_part(s);
}

/// Which building feeds which and why, and what lies in one trench.
std::string feeds_part(const Answer& a) {
    if (a.schemes.empty()) return "";
    const SchemeAnswer& s = a.schemes.front();
    std::string text;
    if (!a.feeds.empty()) text += heading("WHICH FEEDS WHICH");
    for (const auto& feed : a.feeds) text += wrapped("  - ", feed.says, 4);
    std::string not_built;
    for (const std::string& run : s.not_built) not_built += (not_built.empty() ? "" : ", ") + run;
    if (!not_built.empty()) text += wrapped("  - ", "not built: " + not_built, 4);
    if (!s.trenches.empty()) text += heading("SHARED TRENCHES");
    for (const auto& trench : s.trenches) text += wrapped("  - ", trench.says, 4);
    return text;
}

/// How many of the schemes were looked at how closely.
std::string search_part(const Answer& a) {
    const answer::SearchAnswer& s = a.search;
    if (s.stopped && s.rounds == 0) {
        return "\n" +
               wrapped("",
                       fmt::format("{} schemes considered before it was stopped. Search "
                                   "{} ms; data {}",
                                   s.candidates, significant(s.milliseconds, 2), a.data_version),
                       0);
    }
    if (s.rounds > 0) {
        return "\n" +
               wrapped("",
                       fmt::format("{} schemes considered, run by run: {} could be part of the "
                                   "cheapest whole. {}. Search {} ms; data {}",
                                   s.candidates, s.evaluated,
                                   s.proved ? fmt::format("No sound way costs less than {}",
                                                          money(s.at_least))
                                            : std::string("Not proved: stopped"),
                                   significant(s.milliseconds, 2), a.data_version),
                       0);
    }
    return "\n" +
           wrapped("",
                   fmt::format("{} schemes considered: {} judged one by one, {} of them sound and "
                               "{} sound on conditions; {} set aside, being beaten by a sound one "
                               "whatever judging would show; {} fell with their route or device. "
                               "Search {} ms; data {}",
                               s.candidates, s.evaluated, s.sound, s.conditional, s.set_aside,
                               s.candidates - s.evaluated - s.set_aside,
                               significant(s.milliseconds, 2), a.data_version),
                   0);
}

}  // namespace

std::string progress_words(const answer::Progress& p) {
    if (p.others) return "the cheapest is found; looking for others";
    std::string text = "looking for the cheapest";
    if (p.rounds > 0) text += fmt::format("; {} tried", p.rounds);
    if (std::isfinite(p.price)) text += ", best " + money(p.price);
    if (p.at_least > 0 && std::isfinite(p.at_least)) text += ", at least " + money(p.at_least);
    return text;
}

std::string design_screen(const Answer& a) {
    std::string text = a.job + "\n";
    text += recommended_part(a) + feeds_part(a) + demand_part(a) + advice_part(a) + others_part(a) +
            dropped_part(a) + unknowns_part(a);
    text += heading("BEFORE ANYONE ACTS ON THIS");
    for (const std::string& caution : a.cautions) text += wrapped("  ", caution, 2);
    return text + search_part(a);
}

}  // namespace toft::cli
