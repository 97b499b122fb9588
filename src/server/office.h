#pragma once
// All that answers are made from.

#include "print/font.h"
#include "request/request.h"
#include "door/devices.h"
#include "door/guard.h"
#include "server/listeners.h"
#include "door/pairing.h"
#include "server/shelf.h"
#include "store/store.h"

#include <functional>
#include <optional>
#include <string>

namespace toft::server {

struct OfficeParts {
    std::function<Outcome<store::Store>()> open_store;
    Outcome<print::Fonts> fonts;
    std::function<void(const std::string&)> say = {};  ///< to who stands before this machine
    double (*milliseconds)() = nullptr;                ///< steady clock
};

struct Office {
    explicit Office(OfficeParts given)
        : parts(std::move(given)), stores(parts.open_store), benches(request::Bench::load) {}

    OfficeParts parts;
    Shelf<store::Store> stores;
    Shelf<request::Bench> benches;
    Door door = {};
    Listeners listeners = {};
    Pairing pairing = {};
    Devices devices = {};

    double seconds() const { return parts.milliseconds() / 1000; }
    /// Where other devices find this server; of this machine alone, localhost.
    std::string address() const;
    /// A new code on the screen.
    void show_code();
};

/// Now in UTC, as the store wants it.
std::string now_text();

}  // namespace toft::server
