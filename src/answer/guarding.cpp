#include "answer/guarding.h"

#include "answer/answer.h"
#include "guard/caution.h"
#include "study/selectivity.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::answer {

namespace {

constexpr double milli = 1e-3;

CircuitGuard circuit_guard(const guard::View& view, std::size_t i) {
    const site::Circuit& circuit = guard::circuit_at(view, i);
    const Amperes fitted = guard::circuit_sensitivity(view);
    return {
        guard::circuit_name(view, i),     fitted.number() / milli,
        guard::need_of(view, circuit),    guard::sort_of(view, circuit),
        guard::leakage_of(view, circuit), guard::leakage_allowed(view, fitted).number() / milli};
}

Ohms electrode_of(const study::Setting<Silent>& setting, const guard::View& view) {
    return view.own_electrode ? setting.building.ra_most : setting.supply.ra_most;
}

std::string lost_words(const guard::View& view, const guard::Darkness& dark, site::CircuitKind kind,
                       const char* what) {
    std::string names;
    for (const std::size_t i : guard::lost_with_others(dark)) {
        if (guard::circuit_at(view, i).kind != kind) continue;
        names += (names.empty() ? "" : ", ") + guard::circuit_name(view, i);
    }
    return names.empty()
               ? ""
               : fmt::format("{} ({}) may be lost by a weak earth fault on another circuit", what,
                             names);
}

}  // namespace

GuardAnswer guard_of(const study::Setting<Silent>& setting, const study::RunScheme& scheme) {
    const guard::View view = guard::view_of(setting, scheme);
    const guard::Chain chain = guard::chain_of(view, scheme, setting.house.behind_rcd);
    GuardAnswer out;
    for (std::size_t i = 0; i < guard::circuit_count(view); ++i) {
        out.circuits.push_back(circuit_guard(view, i));
    }
    out.pairs = guard::pairs_of(view, chain);
    out.remarks = guard::remarks_of(view, chain, electrode_of(setting, view));
    Silent silent;
    study::Figures<Silent> figures;
    study::work_out(silent, setting, scheme, study::Stage::circuits, figures);
    out.dark = guard::darkness_of({view, scheme, chain, guard::fault_sizes(figures), setting.ib,
                                   study::circuit_devices(setting, figures)});
    const guard::Cautions cautions = guard::cautions_of(view, chain);
    out.cautions.assign(cautions.says.begin(), cautions.says.begin() + cautions.count);
    for (const guard::Remark& remark : out.remarks) {
        if (!remark.settled) out.cautions.emplace_back(remark.says);
    }
    for (const std::string& lost :
         {lost_words(view, out.dark, site::CircuitKind::freezer, "the freezer"),
          lost_words(view, out.dark, site::CircuitKind::lighting, "the lights")}) {
        if (!lost.empty()) out.cautions.push_back(lost);
    }
    return out;
}

std::string instead_of(const guard::Sort& sort) {
    return sort.detection_instead ? "A, where the charging point detects 6 mA of smooth d.c." : "";
}

std::vector<RcdAnswer> board_rcds(const GuardAnswer& guard) {
    std::vector<RcdAnswer> rcds;
    for (const CircuitGuard& circuit : guard.circuits) {
        const std::string& type = site::word(circuit.sort.type);
        const std::string instead = instead_of(circuit.sort);
        const auto same = std::find_if(rcds.begin(), rcds.end(), [&](const RcdAnswer& rcd) {
            return rcd.type == type && rcd.instead == instead;
        });
        if (same != rcds.end()) {
            same->covers.push_back(circuit.name);
        } else {
            rcds.push_back({circuit.fitted_ma, type, false, {circuit.name}, instead});
        }
    }
    return rcds;
}

void set_upstream_type(const GuardAnswer& guard, RcdAnswer& rcd) {
    site::RcdType type = site::RcdType::a;
    site::RcdType least = site::RcdType::a;
    for (const CircuitGuard& circuit : guard.circuits) {
        type = std::max(type, circuit.sort.type);
        least = std::max(least, circuit.sort.least_upstream());
    }
    rcd.type = site::word(type);
    rcd.instead = least == type ? ""
                                : site::word(least) +
                                      ", where the charging point detects 6 mA of smooth d.c.";
}

std::vector<const Citation*> citations_of(const GuardAnswer& guard) {
    std::vector<const Citation*> citations;
    const auto add = [&](const tables::Footing* footing) {
        if (footing) citations.push_back(footing->citation);
    };
    for (const CircuitGuard& circuit : guard.circuits) {
        for (const guard::Reason& reason : circuit.need.reasons) add(&reason.row->footing);
        add(circuit.sort.footing);
    }
    for (const guard::Remark& remark : guard.remarks) add(remark.footing);
    return citations;
}

void add_guard_cautions(SchemeAnswer& scheme) {
    for (const std::string& caution : scheme.guard.cautions) {
        if (std::find(scheme.cautions.begin(), scheme.cautions.end(), caution) ==
            scheme.cautions.end()) {
            scheme.cautions.push_back(caution);
        }
    }
}

}  // namespace toft::answer
