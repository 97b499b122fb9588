#include "answer/describe.h"

#include "answer/demand.h"
#include "base/text.h"
#include "existing/found.h"
#include "site/built_words.h"
#include "walk/conclusion.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {

namespace {

std::string mm2(double section) { return significant(section, 6) + " mm²"; }

std::string device_words(const RunAnswer& run) {
    const DeviceAnswer& d = run.device;
    const std::string rating = significant(d.rating_a, 6);
    const char* poles = run.phases == 3 ? "three-pole " : "";
    if (d.curve.empty()) {
        return run.phases == 3 ? fmt::format("three {} A {} fuses", rating, d.standard)
                               : fmt::format("a {} A {} {}", rating, d.standard, d.kind);
    }
    const std::string breaking = significant(d.breaking_capacity_ka, 4);
    if (d.standard == "BS EN 60947-2") {
        return fmt::format("a {} A {}{} ({} kA)", rating, poles, d.kind, breaking);
    }
    const std::string residual =
        run.rcd && d.kind == "RCBO" ? significant(run.rcd->sensitivity_ma, 4) + " mA, " : "";
    return fmt::format("a {} A {}type {} {} ({}{} kA)", rating, poles, d.curve, d.kind, residual,
                       breaking);
}

/// "3-core 10 mm² armoured", "two 2-core 50 mm² armoured PVC copper side by side".
std::string cable_words(const CableAnswer& c) {
    const bool usual = c.family == "armoured XLPE copper";
    std::string words =
        fmt::format("{}-core {} {}", c.cores, mm2(c.live_mm2), usual ? "armoured" : c.family);
    if (c.family == "flat twin and earth") words = mm2(c.live_mm2) + " flat twin-and-earth";
    return c.parallel == 1 ? words + " cable" : "two " + words + " cables side by side";
}

std::string all_cables(const RunAnswer& run) {
    std::string words = cable_words(run.stretches.front());
    for (std::size_t i = 1; i < run.stretches.size(); ++i) {
        const StretchAnswer& s = run.stretches[i];
        words += fmt::format(", from leg {} on {}", s.first_leg, cable_words(s));
    }
    return words;
}

/// "fuse", "type B breaker 6 kA": without the rating.
std::string short_device(const DeviceAnswer& d) {
    const std::string breaking = significant(d.breaking_capacity_ka, 4);
    if (d.curve.empty()) return d.standard == "BS 88-3" ? "fuse" : d.standard + " " + d.kind;
    if (d.standard == "BS EN 60947-2") return fmt::format("{} {} kA", d.kind, breaking);
    return fmt::format("type {} {} {} kA", d.curve, d.kind, breaking);
}

std::string place_words(const RunAnswer& run) {
    const std::string& fed_from = run.fed_from;
    if (fed_from == "tails") {
        return run.device.curve.empty() ? "in a switch-fuse on the tails, behind an isolator"
                                        : "in a box of its own on the tails, behind an isolator";
    }
    if (fed_from == "new board") return "in a new small board on the tails, behind an isolator";
    if (!run.feeder.empty()) return fmt::format("in a way of the board of {}", run.feeder);
    return "in a spare way of the house's board";
}

bool stays(const CableAnswer& c) {
    return c.laid == study::laid_word(study::Laid::kept) ||
           c.laid == study::laid_word(study::Laid::doubled);
}

/// "Feed it with …", "Keep the cable that is there, … : feed it".
std::string feed_words(const RunAnswer& run) {
    const std::string how = phases_words(run);
    const StretchAnswer& first = run.stretches.front();
    const std::string device =
        device_words(run) + (run.device_stays ? ", which stays as it is," : "");
    const std::string from = fmt::format("from {} {}", device, place_words(run));
    if (stays(first)) {
        const bool alone = first.parallel == 1;
        CableAnswer one = first;
        one.parallel = 1;
        return fmt::format("Keep the cable that is there, a {}{}; feed {} {}{}", cable_words(one),
                           alone ? "" : ", and lay a second like it beside it",
                           alone ? "it" : "both", how, from);
    }
    return fmt::format("{} {}with {} {}",
                       first.laid.empty() ? "Feed it" : "Replace the cable that is there: feed it",
                       how, all_cables(run), from);
}

std::string protective_words(const SchemeAnswer& s) {
    const RunAnswer& run = s.run;
    if (s.building.earthing == "own electrode") {
        const char* near = run.feeder.empty() ? "the house" : "the near end";
        return run.stretches.back().armoured
                   ? fmt::format(
                         "give the building its own earth electrode; earth the armour at "
                         "{} only and insulate it at the far end",
                         near)
                   : "give the building its own earth electrode; leave "
                     "the cable's protective conductor "
                     "unconnected and insulated at the far end";
    }
    const bool electrode = s.building.earthing == "shared electrode";
    const std::string whose = !run.feeder.empty() ? "the earth of that board"
                              : electrode         ? "the house's electrode"
                                                  : "the house's earth";
    std::string by;
    for (const StretchAnswer& stretch : run.stretches) {
        const std::string here =
            stretch.protective_conductor +
            (stretch.separate_mm2 ? fmt::format(" ({} copper)", mm2(*stretch.separate_mm2)) : "");
        if (by.empty()) {
            by = "through the " + here;
        } else {
            by += ", then the " + here;
        }
    }
    return fmt::format("carry {} out {}", whose, by);
}

std::string joined(const std::vector<BondAnswer>& bonds) {
    std::string text;
    for (std::size_t i = 0; i < bonds.size(); ++i) {
        if (i > 0) text += i + 1 == bonds.size() ? " and the " : ", the ";
        text += bonds[i].part;
    }
    return text;
}

bool has_part(const study::Setting<Silent>& setting, site::Metal what) {
    for (const study::MetalPart& part : setting.building.parts) {
        if (part.name == site::word(what)) return true;
    }
    return false;
}

void tell_operator(const study::Setting<Silent>& setting, SchemeAnswer& s) {
    for (const NoticeAnswer& notice : notices_of(setting)) {
        s.tell.push_back({"network operator", notice.when, notice.why});
    }
    if (s.building.earthing == "supply earth") {
        s.tell.push_back({"network operator", "before",
                          "ask whether their earth may be taken to another building"});
    }
}

/// What the whole would cost with it, in words.
std::string other_words(const site::Job& job, const OtherFeedAnswer& other) {
    const auto run = std::find_if(job.runs.begin(), job.runs.end(),
                                  [&](const site::Run& r) { return r.id == other.run; });
    const std::string start = site::start_words(job, *run);
    if (!other.more) {
        return other.proved ? start + " nothing sound can be built"
                            : start + " nothing sound was found, which is no proof";
    }
    if (std::abs(*other.more) < 0.5) return start + " it would cost the same";
    return fmt::format("{} it would be £{} more{}", start, fixed(*other.more, 0),
                       other.proved ? "" : ", or less: not proved");
}

}  // namespace

std::string phases_words(const RunAnswer& run) {
    if (run.line > 0) return fmt::format("on L{} ", run.line);
    return run.phases == 3 ? "on three phases " : "";
}

std::string sentence_of(const SchemeAnswer& s) {
    const RunAnswer& run = s.run;
    std::string text = feed_words(run);
    if (run.rcd && run.rcd->delayed) {
        text +=
            fmt::format(", behind a delayed {} mA RCD", significant(run.rcd->sensitivity_ma, 4));
    }
    text += "; " + protective_words(s);
    if (!s.building.bonding.empty()) {
        text += fmt::format("; bond the {} there with {} copper", joined(s.building.bonding),
                            mm2(s.building.bonding.front().size_mm2));
    }
    return text + ".";
}

std::string short_words(const SchemeAnswer& s) {
    const RunAnswer& run = s.run;
    std::string text = run.phases == 3 ? "three-phase, " : "";
    if (run.line > 0) text += fmt::format("on L{}, ", run.line);
    for (const StretchAnswer& stretch : run.stretches) {
        std::string cable = cable_words(stretch);
        for (const char* ending : {" armoured cable", " cable"}) {
            const std::string end = ending;
            if (cable.size() > end.size() &&
                cable.compare(cable.size() - end.size(), end.size(), end) == 0) {
                cable.resize(cable.size() - end.size());
                break;
            }
        }
        if (stays(stretch)) text += stretch.parallel > 1 ? "keep and double, " : "keep, ";
        text += cable + ", " + stretch.protective_conductor;
        if (stretch.separate_mm2) text += " " + mm2(*stretch.separate_mm2);
        text += ", ";
    }
    text += s.building.earthing + ", " + significant(run.device.rating_a, 6) + " A ";
    text += short_device(run.device) + ", " + run.fed_from + (run.device_stays ? ", stays" : "");
    if (run.rcd && run.rcd->delayed)
        text += fmt::format(", {} mA delayed RCD", significant(run.rcd->sensitivity_ma, 4));
    return text;
}

std::string nearest_sentence(const search::Dropped& dropped) {
    if (!dropped.nearest) return "";
    return fmt::format("{} misses by {} %", study::scheme_key(*dropped.nearest),
                       significant((dropped.nearest_use - 1) * 100, 2));
}

namespace {

std::string caution_of_prices(const price::Book& book) {
    if (book.invented == 0) {
        return fmt::format("Prices are those of {}; whoever offers them stands by them.",
                           book.name);
    }
    if (book.invented == book.rows) {
        return "Price from an invented book: it shows which scheme is dearer, not what you will "
               "pay.";
    }
    return fmt::format(
        "Of the {} prices of {} {} are still invented: the price shows which scheme is dearer, not "
        "what you will pay.",
        book.rows, book.name, book.invented);
}

}  // namespace

std::vector<std::string> standing_cautions(const price::Book& book) {
    return {
        "Electricity kills. A competent, licensed person designs, does and tests this work; this "
        "answer is a calculation, not a permission.",
        "The local code and the network operator decide. Figures are those of BS 7671:2018 up to "
        "Amendment 3; Amendment 4:2026 governs since 15 October 2026 and its tables were not seen.",
        "Measure Ze and the fault current, prove the earthing type and isolate before any of it is "
        "built; test every figure after.",
        caution_of_prices(book),
    };
}

namespace {

/// Nobody but the operator, the meter's operator or whom they authorise draws the cut-out fuse.
void tell_of_isolation(const study::Setting<Silent>& setting, SchemeAnswer& s) {
    if (s.run.fed_from == "spare way" || setting.house.isolator) return;
    s.tell.push_back(
        {"network operator or meter operator", "before",
         setting.job->intake.isolator == site::Answer::no
             ? "no isolator is in the tails: only they, or whom they authorise, draw the fuse to "
               "have one fitted; book the visit"
             : "look whether an isolator is in the tails: without one only they, or whom they "
               "authorise, draw the fuse"});
}

}  // namespace

void add_duties(const study::Setting<Silent>& setting, SchemeAnswer& s) {
    tell_of_isolation(setting, s);
    tell_operator(setting, s);
    s.tell.push_back({"building control, or the registration scheme", "after",
                      "a new circuit is notifiable work in most places; rules differ by country"});
    for (const FindingAnswer& f : s.findings) {
        if (f.verdict == rules::Verdict::caution) s.cautions.push_back(f.says);
    }
    for (const std::string& line : setting.circuits.left_out) s.cautions.push_back(line);
    if (setting.supply.system == site::Earthing::tn_c_s && s.building.earthing == "supply earth") {
        s.cautions.push_back(
            walk::residual_risk(walk::Choice::supply_earth, setting.supply.system));
    }
    if (setting.supply.system != site::Earthing::tt && s.building.earthing == "own electrode") {
        s.cautions.push_back(
            "Label the building: its earth is its own; the armour must not be joined "
            "to it, and nothing on the house's earth brought within reach.");
    }
    if (s.building.electrode && !s.building.electrode->measured) {
        s.cautions.push_back("The electrode is predicted from the soil; only a test proves it.");
    }
    if (has_part(setting, site::Metal::lightning_rod)) {
        s.needs_a_person.push_back("lightning protection: its bonding needs its designer");
    }
    s.needs_a_person.push_back("a competent, licensed person signs the design and the tests");
}

namespace {

/// "Garage: part the rod … (about £62 before tax, in the price)".
std::string first_work(const existing::FoundWrong& f, const price::Book& book) {
    const std::string what = fmt::format("{}: {}", f.where, f.row->first);
    bool priced = false;
    const price::Item item = price::item_of(f.row->item, priced);
    if (!priced) return what;
    return fmt::format("{} (about £{} before tax, in the price)", what,
                       fixed(book.amount(item), 0));
}

}  // namespace

namespace {

/// A cable that may not stay is in use until the new one is in.
void warn_of_old_cable(const study::Setting<Silent>& setting, SchemeAnswer& s) {
    if (!setting.run->existing) return;
    const site::Existing& old = *setting.run->existing;
    const Ohms least = setting.catalogue->limits.insulation_least.value;
    std::string what;
    if (old.insulation.known && old.insulation.low < least) {
        what = fmt::format("reads {} MΩ of insulation where {} is the least",
                           significant(old.insulation.low.number() / 1e6, 3),
                           significant(least.number() / 1e6, 3));
    } else if (old.condition == site::Condition::damaged) {
        what = "is damaged";
    }
    if (what.empty()) return;
    s.cautions.push_back(fmt::format(
        "Danger now. {}: the cable that is there {}: isolate it, and do not use it until it is "
        "replaced",
        setting.run->id, what));
    s.tell.push_back({"everyone there", "now", "the cable that is there " + what});
}

}  // namespace

void add_found(const study::Setting<Silent>& setting, const price::Book& book, SchemeAnswer& s) {
    warn_of_old_cable(setting, s);
    for (const existing::FoundWrong& f : existing::found_for(setting, s.scheme)) {
        const tables::FoundRow& row = *f.row;
        const std::string what = fmt::format("{}: {}; {}", f.where, row.wrong, row.danger);
        if (row.weight == "record") {
            s.cautions.push_back(fmt::format("To be recorded. {}. {}", what, row.first));
            continue;
        }
        if (!row.tell.empty()) s.tell.push_back({row.tell, "now", what});
        s.cautions.push_back((row.weight == "danger now" ? "Danger now. " : "") + what);
        s.house_work.push_back(first_work(f, book));
    }
}

void add_found_unbuilt(const tables::Catalogue& catalogue, const site::Job& stated,
                       const site::Job& built, SchemeAnswer& s) {
    const std::vector<std::string> unbuilt = site::not_built(stated, built);
    for (const site::Run& run : stated.runs) {
        if (std::find(unbuilt.begin(), unbuilt.end(), run.id) == unbuilt.end()) continue;
        const std::string where = fmt::format("{}, which is not built", run.id);
        for (const tables::FoundRow& row : catalogue.found) {
            const bool said =
                std::find(run.found.begin(), run.found.end(), row.found) != run.found.end();
            if (!said || row.at != "run" || row.cable == "kept") continue;
            const std::string what = fmt::format("{}: {}; {}", where, row.wrong, row.danger);
            if (!row.tell.empty()) s.tell.push_back({row.tell, "now", what});
            s.cautions.push_back((row.weight == "danger now" ? "Danger now. " : "") + what);
            s.house_work.push_back(where + ": " + row.first);
        }
        if (run.existing) {
            s.house_work.push_back(where +
                                   ": part the cable that is there at both ends and mark it dead");
        }
    }
}

std::vector<FeedAnswer> feeds_of(const site::Job& job, const tree::Feedings& found) {
    std::vector<FeedAnswer> feeds;
    if (found.ways.empty()) return feeds;
    const double best = found.ways.front().best.found->total;
    for (const tree::FeedChoice& choice : found.choices) {
        const site::Run& run = job.runs[choice.run];
        FeedAnswer feed{choice.building, run.id, run.from, {}, ""};
        feed.says =
            fmt::format("{} is fed {}", site::name_in(job, run.to), site::start_words(job, run));
        for (const tree::OtherFeed& other : choice.others) {
            OtherFeedAnswer said{
                job.runs[other.run].id, job.runs[other.run].from, {}, other.proved, 0};
            if (other.found) said.more = found.ways[other.way].best.found->total - best;
            feed.says += (feed.others.empty() ? ": " : "; ") + other_words(job, said);
            feed.others.push_back(std::move(said));
        }
        feeds.push_back(std::move(feed));
    }
    return feeds;
}

std::vector<TrenchAnswer> trenches_of(const site::Job& built) {
    std::vector<TrenchAnswer> all;
    for (const site::SharedTrench& trench : site::shared_trenches(built)) {
        all.push_back({trench.name, trench.dug_for, trench.beside, trench.says()});
    }
    return all;
}

}  // namespace toft::answer
