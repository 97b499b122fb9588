#pragma once
// Residual current protection of a scheme: what each circuit needs and gets, how the devices in a
// row stand to each other, and what goes dark. Pages: docs/methods/residual-need.md, dark.md.

#include "guard/dark.h"
#include "guard/leakage.h"
#include "guard/need.h"

#include <string>
#include <vector>

namespace toft::answer {

struct RcdAnswer;
struct SchemeAnswer;

struct CircuitGuard {
    std::string name;
    double fitted_ma = 0;
    guard::Need need;
    guard::Sort sort;
    guard::Leakage leakage;
    double leakage_allowed_ma = 0;
};

struct GuardAnswer {
    std::vector<CircuitGuard> circuits;
    std::vector<guard::Pair> pairs;
    std::vector<guard::Remark> remarks;
    guard::Darkness dark;
    std::vector<std::string> cautions;  ///< all of them, the heaviest first
};

GuardAnswer guard_of(const study::Setting<Silent>& setting, const study::RunScheme& scheme);

/// The devices of the building's board: circuits that need the same stand in one row.
std::vector<RcdAnswer> board_rcds(const GuardAnswer& guard);

/// Type of a device in front of all circuits.
void set_upstream_type(const GuardAnswer& guard, RcdAnswer& rcd);

/// What `sort` asks for instead of its type; empty where there is no other way.
std::string instead_of(const guard::Sort& sort);

/// What needs, types and remarks rest on.
std::vector<const Citation*> citations_of(const GuardAnswer& guard);

/// Adds what the findings have not said yet.
void add_guard_cautions(SchemeAnswer& scheme);

}  // namespace toft::answer
