#pragma once
// Devices of a run and of circuits as rows of the list.

#include "ware/draft.h"

#include <string>
#include <vector>

namespace toft::ware {

/// What a device must be that current from solar or batteries passes.
inline constexpr const char* back_fed_words =
    "solar or batteries feed back through it: made for current in both directions";

/// "circuit-breaker BS EN 60898, type B, 6 kA".
std::string device_words(const answer::DeviceAnswer& device);

/// True for an item that prices a device at the head of a run.
bool is_device(const std::string& item);

/// The device at the head of the part's run: of three phases three fuses, or one three-pole device.
Draft head_row(const RunBill& part, const price::BillLine& line);

/// The devices of the circuits that were designed, by rating; what the line counts beyond them has
/// no rating yet.
std::vector<Draft> circuit_rows(const RunBill& part, const price::BillLine& line);

}  // namespace toft::ware
