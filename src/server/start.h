#pragma once
// The server as a whole: opens the store, listens, says where, serves until it is asked to stop.

#include "base/outcome.h"
#include "http/http.h"
#include "print/font.h"

#include <functional>
#include <string>

namespace toft::server {

struct Running {
    std::string address;         ///< for a browser on this machine
    std::function<void()> stop;  ///< from any thread
};

struct Start {
    std::uint16_t port = 8377;  ///< 0 for any that is free
    bool lan = false;           ///< listens to the network, too; other devices must pair
    std::string store;          ///< file; made where it is not there
    Outcome<print::Fonts> fonts;
    double (*milliseconds)() = nullptr;              ///< steady clock
    std::function<void(const std::string&)> say;     ///< to who stands before the machine
    std::function<void(const Running&)> ready = {};  ///< told once it serves
    bool signals = true;                             ///< SIGINT and SIGTERM stop it
    Limits limits = {};
};

/// Returns when it was asked to stop. Faults: those of the store, `port`. A new store begins with
/// the demo job.
Faults serve(const Start& start);

}  // namespace toft::server
