#include "ware/device_rows.h"

#include "base/text.h"
#include "ware/pence.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::ware {

namespace {

std::string kind_words(const std::string& kind) {
    if (kind == "fuse") return "cartridge fuse";
    if (kind == "rewirable fuse") return "semi-enclosed fuse, carrier and wire";
    if (kind == "breaker") return "circuit-breaker";
    return kind;
}

bool fuse(const answer::DeviceAnswer& device) {
    return device.kind == "fuse" || device.kind == "rewirable fuse";
}

std::string amperes_words(double rating) { return significant(rating, 4) + " A"; }

std::string residual_words(const answer::RcdAnswer& rcd) {
    return fmt::format(", {} mA{}", significant(rcd.sensitivity_ma, 3),
                       rcd.type.empty() ? "" : " type " + rcd.type);
}

/// One of the devices that the line counts.
Draft one_of(const price::BillLine& line, std::string what, std::string size) {
    Draft draft;
    draft.row.group = Group::far_end;
    draft.row.what = std::move(what);
    draft.row.size = std::move(size);
    draft.row.unit = line.unit;
    draft.row.quantity = 1;
    draft.row.each = line.each;
    draft.row.amount = of_pence(pence(line.each));
    return draft;
}

bool gives(const answer::CircuitAnswer& circuit) {
    return circuit.kind == site::word(site::CircuitKind::solar) ||
           circuit.kind == site::word(site::CircuitKind::battery);
}

Draft of_circuit(const price::BillLine& line, const answer::CircuitAnswer& circuit) {
    std::string what = device_words(circuit.device);
    if (circuit.phases == 3) what += ", three-pole";
    if (circuit.rcd_ma > 0) {
        what += fmt::format(", {} mA type {}", significant(circuit.rcd_ma, 3),
                            circuit.rcd_type.empty() ? "as the load asks" : circuit.rcd_type);
    }
    if (gives(circuit)) what += ", for current in both directions";
    Draft draft = one_of(line, std::move(what), amperes_words(circuit.device.rating_a));
    if (gives(circuit)) {
        draft.row.note = fmt::format("for {}, which feeds back",
                                     circuit.name.empty() ? circuit.kind : circuit.name);
    }
    return draft;
}

}  // namespace

std::string device_words(const answer::DeviceAnswer& device) {
    std::string words = kind_words(device.kind) + " " + device.standard;
    if (fuse(device)) return words;
    if (!device.curve.empty()) words += ", type " + device.curve;
    return words + fmt::format(", {} kA", significant(device.breaking_capacity_ka, 3));
}

bool is_device(const std::string& item) {
    for (const char* prefix : {"fuse ", "breaker ", "RCBO ", "moulded breaker "}) {
        if (item.rfind(prefix, 0) == 0) return true;
    }
    return false;
}

Draft head_row(const RunBill& part, const price::BillLine& line) {
    const answer::RunAnswer& run = part.scheme.run;
    Draft draft = one_of(line, device_words(run.device), amperes_words(run.device.rating_a));
    draft.row.group = Group::near_end;
    draft.row.quantity = line.quantity;
    draft.row.amount = line.amount;
    draft.row.lines = 1;
    if (run.device.kind == "RCBO" && run.rcd) draft.row.what += residual_words(*run.rcd);
    draft.row.note = fmt::format("at the head of the run to {}, in {}", part.scheme.building.name,
                                 run.feeder.empty() ? "the house" : run.feeder);
    if (part.behind.gives && !fuse(run.device)) {
        draft.row.note += std::string("; ") + back_fed_words;
    }
    if (run.phases != 3) return draft;
    if (!fuse(run.device)) draft.row.what += ", three-pole";
    draft.row.quantity = fuse(run.device) ? 3 : 1;
    draft.row.each = shared_out(line.amount, draft.row.quantity);
    return draft;
}

std::vector<Draft> circuit_rows(const RunBill& part, const price::BillLine& line) {
    std::vector<Draft> drafts;
    const auto wanted = static_cast<std::size_t>(std::lround(line.quantity));
    for (const answer::CircuitAnswer& circuit : part.scheme.building.circuits) {
        if (drafts.size() < wanted) drafts.push_back(of_circuit(line, circuit));
    }
    while (drafts.size() < wanted) {
        drafts.push_back(one_of(line, "RCBO BS EN 61009, 30 mA", "rating not settled"));
        drafts.back().row.note = "no circuit is stated or designed for it: rating by its load";
        if (part.behind.gives) {
            drafts.back().row.note +=
                "; for solar or batteries one made for current in both "
                "directions";
        }
    }
    if (drafts.empty()) {
        drafts.push_back(one_of(line, line.item, ""));
        drafts.back().row.quantity = line.quantity;
    }
    long long rest = pence(line.amount);
    for (const Draft& draft : drafts) rest -= pence(*draft.row.amount);
    auto& last = drafts.back().row.amount;
    last = of_pence(pence(*last) + rest);
    drafts.front().row.lines = 1;
    return drafts;
}

}  // namespace toft::ware
