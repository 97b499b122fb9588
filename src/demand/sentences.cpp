#include "demand/sentences.h"

#include "base/text.h"
#include "demand/allowance.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::demand {

namespace {

void list(std::string& words, const std::string& more) {
    if (words.find(more) != std::string::npos) return;
    words += (words.empty() ? "" : "; ") + more;
}

std::string whole_words(const site::Circuit& circuit) {
    if (circuit.continuous == site::Answer::yes) return circuit.name + " (on for hours)";
    if (circuit.kind == site::CircuitKind::welder && circuit.duty_percent.known) {
        return fmt::format("{} at its effective current for {} % duty", circuit.name,
                           significant(circuit.duty_percent.high, 3));
    }
    return circuit.name;
}

/// "load reckoned as likely, with the allowances of a household: …; whole: …".
std::string allowances_sentence(const tables::Demand& tables, const site::Building& b,
                                site::Scenario scenario) {
    const std::string& premises =
        tables::premises_of(tables, b.use ? site::word(*b.use) : std::string());
    std::string made;
    std::string whole;
    for (const site::Circuit& circuit : b.circuits) {
        if (!counts(circuit, scenario)) continue;
        if (current_from(tables, circuit) == CurrentFrom::nothing) continue;
        const auto& kind = tables::load_of_kind(tables, site::word(circuit.kind));
        const tables::Allowance* row = tables::find_allowance(tables, kind.load, premises);
        const bool reduced = row && (row->rest.value < 1 || row->second.value < 1);
        if (reduced && circuit.continuous != site::Answer::yes) {
            list(made, fmt::format("{} {}", kind.load, allowance_words(*row)));
        } else {
            list(whole, whole_words(circuit));
        }
    }
    std::string text = fmt::format("the load is reckoned {}", scenario_words(scenario));
    if (!made.empty()) {
        text += fmt::format(", with the On-Site Guide's allowances for a {}: {}", premises, made);
    }
    if (!whole.empty()) text += "; counted whole: " + whole;
    return text;
}

constexpr const char* not_stated =
    ": what it draws and gives is not stated and not counted: the run is not sized for it";

std::string solar_words(const site::Circuit& circuit) {
    if (!circuit.load_w.known && !circuit.device) return circuit.name + not_stated;
    return circuit.name +
           ": gives current and is not counted as load; the run is sized to carry it back";
}

std::vector<std::string> circuit_sentences(const tables::Demand& tables,
                                           const site::Circuit& circuit, site::Scenario scenario) {
    const std::string& kind = site::word(circuit.kind);
    const std::string& load = tables::load_of_kind(tables, kind).load;
    switch (current_from(tables, circuit)) {
        case CurrentFrom::usual:
            return {fmt::format(
                "{}: no load and no device stated: taken at {} A, the usual rating of a {} circuit",
                circuit.name,
                significant(tables::find_usual(tables, kind)->rating.value.number(), 3), kind)};
        case CurrentFrom::nothing:
            return {load == tables::load_generation ? solar_words(circuit)
                                                    : circuit.name + not_stated};
        default:
            break;
    }
    const bool by_duty = circuit.kind == site::CircuitKind::welder && circuit.duty_percent.known;
    if (!by_duty || scenario == site::Scenario::everything) return {};
    return {circuit.name +
            ": counts by its effective current; while it is at work more volts are lost than the "
            "answer shows, and a device of hardly more than the load may trip"};
}

bool power_factor_open(const site::Building& b, site::Scenario scenario) {
    if (b.load.known) return false;
    if (b.load_w.known) return !b.power_factor.known;
    return std::any_of(b.circuits.begin(), b.circuits.end(), [&](const site::Circuit& c) {
        return counts(c, scenario) && c.load_w.known && !c.power_factor.known;
    });
}

}  // namespace

std::string scenario_words(site::Scenario scenario) {
    switch (scenario) {
        case site::Scenario::today:
            return "as of today";
        case site::Scenario::likely:
            return "as likely, with what is planned";
        case site::Scenario::everything:
            return "as everything at once, without diversity";
    }
    return "";
}

std::vector<std::string> demand_sentences(const tables::Demand& tables, const site::Building& b,
                                          site::Scenario scenario) {
    std::vector<std::string> all;
    if (by_circuits(b)) {
        all.push_back(scenario == site::Scenario::everything
                          ? "the load is reckoned " + scenario_words(scenario)
                          : allowances_sentence(tables, b, scenario));
        for (const site::Circuit& circuit : b.circuits) {
            if (!counts(circuit, scenario)) continue;
            for (std::string& said : circuit_sentences(tables, circuit, scenario)) {
                all.push_back(std::move(said));
            }
        }
    }
    if (power_factor_open(b, scenario)) {
        all.push_back(
            "power factor not stated: watts over volts gives the current; motors and "
            "inverters draw more");
    }
    return all;
}

}  // namespace toft::demand
