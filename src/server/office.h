#pragma once
// All that answers are made from.

#include "door/devices.h"
#include "door/guard.h"
#include "door/pairing.h"
#include "print/font.h"
#include "request/request.h"
#include "server/listeners.h"
#include "server/shelf.h"
#include "store/store.h"

#include <atomic>
#include <functional>
#include <optional>
#include <string>

namespace toft::server {

/// How long the engine is asked for one answer, in milliseconds. Then it stops where it next looks
/// up (`levers` and `ask`: between two solutions of the job), and says so.
inline constexpr double longest_work = 20'000;

struct OfficeParts {
    std::function<Outcome<store::Store>()> open_store;
    Outcome<print::Fonts> fonts;
    std::function<void(const std::string&)> say = {};  ///< to who stands before this machine
    double (*milliseconds)() = nullptr;                ///< steady clock
};

struct Office {
    explicit Office(OfficeParts given)
        : parts(std::move(given)),
          stores(parts.open_store),
          benches([] { return request::Bench::load(); }) {}

    OfficeParts parts;
    Shelf<store::Store> stores;
    Shelf<request::Bench> benches;
    Door door = {};
    Listeners listeners = {};
    Pairing pairing = {};
    Devices devices = {};

    double seconds() const { return parts.milliseconds() / 1000; }
    /// Whether work that began then (in milliseconds) may go on for who asked.
    bool in_time(double began, const std::atomic<bool>& gone) const {
        return !gone && parts.milliseconds() - began < longest_work;
    }
    /// Where other devices find this server; of this machine alone, localhost.
    std::string address() const;
    /// A new code on the screen.
    void show_code();
    /// … where the one there is no longer valid.
    void show_code_if_expired();

private:
    void say_code(const std::string& code) const;
};

/// Now in UTC, as the store wants it.
std::string now_text();

}  // namespace toft::server
