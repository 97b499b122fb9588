#include "cli/interrupt.h"

#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>

#include <fcntl.h>
#include <poll.h>
#include <unistd.h>

namespace toft::cli {

namespace {

constexpr std::array<int, 2> signals{SIGINT, SIGTERM};

std::atomic<bool> asked{false};
std::array<int, 2> pipe_ends{-1, -1};  // what is written on hearing wakes whoever waits to read
std::array<bool, 2> taken{};

static_assert(std::atomic<bool>::is_always_lock_free);

}  // namespace

extern "C" {
static void hear(int) {
    const int before = errno;
    asked = true;
    for (const int signal : signals) std::signal(signal, SIG_DFL);
    if (write(pipe_ends[1], "", 1) < 0) asked = true;  // nobody waits: `asked` is looked at too
    errno = before;
}
}

Interrupt::Interrupt() {
    asked = false;
    if (pipe(pipe_ends.data()) == 0) {
        // Never in place of a closed input or output: whoever reads there would wait for ever.
        for (int& end : pipe_ends) {
            const int above = fcntl(end, F_DUPFD_CLOEXEC, 3);
            close(end);
            end = above;
        }
    }
    struct sigaction action {};
    action.sa_handler = hear;
    action.sa_flags = SA_RESTART;
    for (std::size_t i = 0; i < signals.size(); ++i) {
        struct sigaction before {};
        sigaction(signals[i], nullptr, &before);
        taken[i] = before.sa_handler != SIG_IGN;
        if (taken[i]) sigaction(signals[i], &action, nullptr);
    }
}

Interrupt::~Interrupt() {
    for (std::size_t i = 0; i < signals.size(); ++i) {
        if (taken[i]) std::signal(signals[i], SIG_DFL);
    }
    for (int& end : pipe_ends) {
        close(end);
        end = -1;
    }
}

bool Interrupt::heard() { return asked; }

bool Interrupt::wait_to_read(int descriptor) {
    std::array<pollfd, 2> both{{{descriptor, POLLIN, 0}, {pipe_ends[0], POLLIN, 0}}};
    while (!asked && poll(both.data(), both.size(), -1) < 0 && errno == EINTR) {
    }
    return !asked;
}

}  // namespace toft::cli
