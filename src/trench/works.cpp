#include "trench/works.h"

#include "site/built.h"
#include "trench/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::trench {

namespace {

/// The job as the scheme builds it, its runs as the scheme lists them.
site::Job built_job(const Of& of) {
    if (!of.scheme) return site::has_choice(of.job) ? of.job : site::as_built(of.job);
    site::Job job = answer::as_built(of.job, *of.scheme);
    std::vector<site::Run> ordered;
    const auto take = [&](const std::string& id) {
        for (const site::Run& run : job.runs) {
            if (run.id == id) ordered.push_back(run);
        }
    };
    take(of.scheme->run.id);
    for (const answer::SchemeAnswer& part : of.scheme->further) take(part.run.id);
    job.runs = std::move(ordered);
    return job;
}

const answer::StretchAnswer* cable_of(const answer::SchemeAnswer* scheme, const std::string& run,
                                      std::size_t number) {
    const answer::SchemeAnswer* part = scheme ? answer::part_of(*scheme, run) : nullptr;
    if (!part) return nullptr;
    for (const answer::StretchAnswer& stretch : part->run.stretches) {
        const auto leg = static_cast<int>(number);
        if (stretch.first_leg <= leg && leg <= stretch.last_leg) return &stretch;
    }
    return nullptr;
}

std::optional<Metres> advised(const tables::Catalogue& tables,
                              const std::optional<site::Surface>& surface) {
    if (!surface) return std::nullopt;
    for (const tables::DepthAdvice& row : tables.depth_advice) {
        if (row.surface == site::word(*surface)) return row.depth.value;
    }
    return std::nullopt;
}

/// The deepest that is stated; else what is advised; else the deepest that is met.
Cover cover_of(const tables::Catalogue& tables, const site::Leg& leg) {
    Cover cover{leg.depth.high, leg.depth.known, advised(tables, leg.surface)};
    if (cover.stated) return cover;
    const tables::OpenRange* range = tables::find_open_range(tables, "depth");
    cover.depth = cover.advised ? *cover.advised : metres(range ? range->high.value : 1);
    return cover;
}

bool same_section(const Trench& a, const Trench& b) {
    const auto plain = [](std::vector<Lying> lying) {
        for (Lying& one : lying) one.sign.clear();
        return lying;
    };
    return a.surface == b.surface && a.cover.depth == b.cover.depth &&
           a.cover.stated == b.cover.stated && plain(a.lying) == plain(b.lying);
}

class Builder {
public:
    explicit Builder(const Of& of) : of_(of) {}

    Works build() {
        works_.job = built_job(of_);
        for (std::size_t r = 0; r < works_.job.runs.size(); ++r) add_run(r);
        for (std::size_t i = 0; i < works_.legs.size(); ++i) dig(i);
        for (std::size_t i = 0; i < works_.legs.size(); ++i) share(i);
        for (Trench& trench : works_.trenches) finish(trench);
        for (std::size_t i = 0; i < works_.trenches.size(); ++i) sort(i);
        add_electrodes();
        return std::move(works_);
    }

private:
    void add_run(std::size_t r) {
        const site::Run& run = works_.job.runs[r];
        for (std::size_t k = 0; k < run.legs.size(); ++k) {
            LegWork one{run_sign(r) + std::to_string(k + 1), r,     k + 1, run.legs[k],
                        cable_of(of_.scheme, run.id, k + 1), false, {}};
            one.stays = site::buried(one.leg.method) && one.cable && stays(*one.cable);
            works_.legs.push_back(std::move(one));
        }
    }

    /// A trench for each leg that one is dug for.
    void dig(std::size_t i) {
        LegWork& one = works_.legs[i];
        if (!site::buried(one.leg.method) || one.stays || !one.leg.dug_for.empty()) return;
        Trench trench;
        trench.name = one.leg.trench;
        trench.surface = one.leg.surface;
        trench.cover = cover_of(of_.tables, one.leg);
        one.trench = works_.trenches.size();
        works_.trenches.push_back(std::move(trench));
        lay(i, works_.trenches.back());
    }

    /// A leg that lies in what is dug for another; where nobody digs that, its own.
    void share(std::size_t i) {
        LegWork& one = works_.legs[i];
        if (!site::buried(one.leg.method) || one.stays || one.trench) return;
        for (std::size_t t = 0; t < works_.trenches.size(); ++t) {
            if (works_.trenches[t].name != one.leg.trench) continue;
            one.trench = t;
            deepen(works_.trenches[t], cover_of(of_.tables, one.leg));
            return lay(i, works_.trenches[t]);
        }
        one.leg.dug_for.clear();
        dig(i);
    }

    /// As deep as the deepest of those in it asks.
    static void deepen(Trench& trench, const Cover& other) {
        if (!(trench.cover.depth < other.depth)) return;
        trench.cover.depth = other.depth;
        trench.cover.stated = trench.cover.stated && other.stated;
    }

    void lay(std::size_t i, Trench& trench) {
        const LegWork& one = works_.legs[i];
        trench.legs.push_back(i);
        for (Lying& thing : lying_of(of_.tables, works_.job.runs[one.run], one.leg, one.cable)) {
            thing.sign = one.sign;
            trench.lying.push_back(std::move(thing));
        }
    }

    void finish(Trench& trench) {
        std::stable_partition(trench.lying.begin(), trench.lying.end(),
                              [](const Lying& one) { return one.kind != Kind::data; });
        const tables::MadeGood& layer = made_good(of_.tables.trench, trench.surface);
        trench.section =
            section_of(of_.tables.trench, trench.lying, trench.cover.depth, layer.layer);
        Metres length;
        for (const std::size_t leg : trench.legs) {
            length = most(length, longest(works_.legs[leg].leg.length));
        }
        trench.of = quantities_of(of_.tables.trench.sizes, trench.section, trench.lying, length);
        works_.total = sum(works_.total, trench.of);
        warn(trench);
    }

    void warn(const Trench& trench) {
        const std::string name = signs_of(works_, trench);
        const std::string under =
            trench.surface ? "under " + site::word(*trench.surface) : std::string("there");
        if (!trench.surface) {
            say(name + ": what lies over it is not stated; reckoned as lawn. Settle it first.");
        }
        if (!trench.cover.stated) {
            say(fmt::format(
                "{}: its depth is not stated; reckoned with {} over the cable{}. Settle "
                "it first.",
                name, metre_words(trench.cover.depth),
                trench.cover.advised ? ", which is advised " + under : ""));
        } else if (trench.cover.advised && trench.cover.depth < *trench.cover.advised) {
            say(fmt::format("{}: {} over the cable is less than the {} that is advised {}.", name,
                            metre_words(trench.cover.depth), metre_words(*trench.cover.advised),
                            under));
        }
        if (trench.of.length <= metres(0)) say(name + ": its length is not known.");
        for (const Lying& one : trench.lying) {
            if (one.there) {
                say(
                    fmt::format("{}: an old cable lies there and stays. Prove it dead, find it and "
                                "dig by hand.",
                                one.sign));
            }
        }
    }

    void sort(std::size_t i) {
        for (Sort& sort : works_.sorts) {
            if (!same_section(works_.trenches[sort.trenches.front()], works_.trenches[i])) continue;
            sort.trenches.push_back(i);
            return;
        }
        works_.sorts.push_back({{i}});
    }

    void add_electrodes() {
        if (!of_.scheme) return;
        std::vector<const answer::SchemeAnswer*> parts{of_.scheme};
        for (const answer::SchemeAnswer& part : of_.scheme->further) parts.push_back(&part);
        for (const answer::SchemeAnswer* part : parts) {
            if (!part->building.electrode) continue;
            const answer::ElectrodeAnswer& e = *part->building.electrode;
            const std::string length = e.length_m > 0 ? metre_words(metres(e.length_m)) : "";
            works_.electrodes.push_back(
                {part->building.id, electrode_words(part->building.id, e.rods, length)});
        }
    }

    std::string electrode_words(const std::string& id, int rods, const std::string& length) const {
        const site::Building* building = site::find_building(works_.job, id);
        if (building && building->electrode.kind != site::ElectrodeKind::rods) {
            return "electrode: " + site::word(building->electrode.kind);
        }
        const std::string of = length.empty() ? "" : " of " + length;
        return rods == 1 ? "one earth rod" + of : fmt::format("{} earth rods{}", rods, of);
    }

    void say(std::string words) { works_.says.push_back(std::move(words)); }

    const Of& of_;
    Works works_;
};

}  // namespace

Works works_of(const Of& of) { return Builder(of).build(); }

std::string run_sign(std::size_t run) {
    const std::string last(1, static_cast<char>('A' + run % 26));
    return run < 26 ? last : run_sign(run / 26 - 1) + last;
}

std::string signs_of(const Works& works, const Trench& trench) {
    std::string signs;
    for (std::size_t i = 0; i < trench.legs.size(); ++i) {
        if (i > 0) signs += i + 1 == trench.legs.size() ? " and " : ", ";
        signs += works.legs[trench.legs[i]].sign;
    }
    return signs;
}

const tables::MadeGood& made_good(const tables::Trench& tables,
                                  const std::optional<site::Surface>& surface) {
    const std::string& wanted = site::word(surface.value_or(site::Surface::lawn));
    for (const tables::MadeGood& row : tables.made_good) {
        if (row.surface == wanted) return row;
    }
    return tables.made_good.front();
}

Metres longest(const site::Fact<Metres>& length) { return length.known ? length.high : metres(0); }

}  // namespace toft::trench
