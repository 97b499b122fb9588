#pragma once
// HTTP/1.1 over TCP: listens, reads requests within bounds, has them answered, writes the answers.
// Slow or hostile clients cost a connection for a bounded time and nothing else.

#include "base/outcome.h"
#include "http/message.h"

#include <chrono>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace toft::server {

struct Limits {
    std::size_t header = 16u << 10;   ///< bytes
    std::size_t connections = 512;    ///< at once; who comes after them is told to come again
    std::size_t of_one_peer = 64;     ///< connections at once from one other machine
    std::size_t waiting_desk = 1024;  ///< requests in line for the store
    std::size_t waiting_bench = 256;  ///< … for the engine
    unsigned desk_threads = 2;
    unsigned bench_threads = 2;
    std::chrono::seconds header_time{10};
    std::chrono::seconds body_time{60};
    std::chrono::seconds write_time{30};  ///< for each quarter of a mebibyte
    std::chrono::seconds idle_time{75};
    std::chrono::seconds heartbeat{15};  ///< between signs of life on an event stream
    std::chrono::seconds grace{3};       ///< for what is under way when asked to stop
};

struct Listening {
    std::vector<std::string> addresses = {"127.0.0.1", "::1"};  ///< numeric
    std::uint16_t port = 0;                                     ///< 0 for any that is free
    Limits limits = {};
    /// SIGINT and SIGTERM stop it; work that does not stop within the grace ends with the program.
    bool signals = false;
};

class Server {
public:
    /// Listens from then on. The first address must be had; others, where the machine has them.
    /// Faults: `port` with the remedy.
    static Outcome<std::unique_ptr<Server>> open(const Listening& listening);
    virtual ~Server() = default;

    virtual std::uint16_t port() const = 0;
    /// Serves until asked to stop.
    virtual void run(const Service& service) = 0;
    /// From any thread.
    virtual void stop() = 0;
};

}  // namespace toft::server
