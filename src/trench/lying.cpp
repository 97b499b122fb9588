#include "trench/lying.h"

#include "trench/duct.h"

#include "base/limit.h"
#include "base/text.h"
#include "study/scheme.h"

#include <fmt/format.h>

namespace toft::trench {

namespace {

std::string cable_words(const answer::CableAnswer& cable) {
    return fmt::format("{}-core {} mm² {}cable", cable.cores, significant(cable.live_mm2, 3),
                       cable.armoured ? "armoured " : "");
}

bool there(const answer::CableAnswer& cable) {
    return cable.laid == study::laid_word(study::Laid::kept) ||
           cable.laid == study::laid_word(study::Laid::doubled);
}

Lying duct_around(const tables::Catalogue& tables, Lying cable, std::vector<Metres> inside) {
    const tables::DuctRow* duct = duct_for(tables, inside).row;
    const Metres outer =
        duct ? duct->outside : tables.ware.ducts.back().outside;  // said below to be too narrow
    cable.says = duct ? fmt::format("{} duct (bore {}) with {}", mm_words(duct->outside),
                                    mm_words(duct->bore), cable.says)
                      : fmt::format("duct wider than {}, to be chosen, with {}", mm_words(outer),
                                    cable.says);
    cable.kind = Kind::duct;
    cable.across = outer;
    cable.inside = std::move(inside);
    return cable;
}

void add_power(const tables::Catalogue& tables, const site::Leg& leg,
               const answer::StretchAnswer& stretch, std::vector<Lying>& all) {
    const bool ducted = leg.method == site::LegMethod::buried_in_duct;
    const bool old = there(stretch);
    for (int i = 0; i < stretch.parallel; ++i) {
        Lying one{Kind::cable,
                  "",
                  cable_words(stretch),
                  millimetres(stretch.overall_mm),
                  {},
                  stretch.armoured,
                  old && i == 0};
        std::vector<Metres> inside{one.across};
        std::optional<Lying> core;
        if (stretch.separate_mm2) {
            const Metres across = core_across(tables, square_millimetres(*stretch.separate_mm2));
            core = Lying{Kind::core, "", significant(*stretch.separate_mm2, 3) + " mm² conductor",
                         across};
            inside.push_back(across);
        }
        if (ducted) {
            if (core) one.says += " and " + core->says;
            all.push_back(duct_around(tables, std::move(one), std::move(inside)));
        } else {
            all.push_back(std::move(one));
            if (core) all.push_back(std::move(*core));
        }
    }
}

const char* carried_word(site::AlsoCarried what) {
    switch (what) {
        case site::AlsoCarried::alarm:
            return "alarm";
        case site::AlsoCarried::telephone:
            return "telephone";
        case site::AlsoCarried::data:
            return "data";
        case site::AlsoCarried::two_way_lighting:
        case site::AlsoCarried::switching:
            break;
    }
    return nullptr;
}

/// What carries signals goes in one duct of its own.
void add_data(const tables::Catalogue& tables, const site::Run& run, std::vector<Lying>& all) {
    std::string carried;
    for (const site::AlsoCarried what : run.also_carries) {
        const char* word = carried_word(what);
        if (word) carried += (carried.empty() ? "" : " and ") + std::string(word);
    }
    if (carried.empty()) return;
    const Metres outer = tables.trench.sizes.data_duct.value;
    all.push_back({Kind::data, "", fmt::format("{} duct for {}", mm_words(outer), carried), outer});
}

}  // namespace

Metres core_across(const tables::Catalogue& tables, SquareMillimetres section) {
    for (const tables::SingleRow& row : tables.ware.singles) {
        if (section <= row.section) return row.overall;
    }
    return tables.ware.singles.back().overall;
}

std::vector<Lying> lying_of(const tables::Catalogue& tables, const site::Run& run,
                            const site::Leg& leg, const answer::StretchAnswer* cable) {
    std::vector<Lying> all;
    if (cable) add_power(tables, leg, *cable, all);
    add_data(tables, run, all);
    return all;
}

bool stays(const answer::StretchAnswer& cable) {
    return cable.laid == study::laid_word(study::Laid::kept) && cable.parallel == 1 &&
           !cable.separate_mm2;
}

}  // namespace toft::trench
