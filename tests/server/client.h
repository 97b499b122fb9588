#pragma once
// A client that says exactly what it is told to, byte by byte, and a server to say it to.

#include "cli/program.h"
#include "server/start.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <sys/time.h>

#include <chrono>
#include <condition_variable>
#include <cstring>
#include <mutex>
#include <string>
#include <thread>

#include <unistd.h>

namespace toft::server {

/// One connection.
class Client {
public:
    explicit Client(int port, const std::string& address = "127.0.0.1") {
        socket_ = socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
        sockaddr_in to{};
        to.sin_family = AF_INET;
        to.sin_port = htons(static_cast<std::uint16_t>(port));
        inet_pton(AF_INET, address.c_str(), &to.sin_addr);
        open_ = connect(socket_, reinterpret_cast<sockaddr*>(&to), sizeof to) == 0;
        const timeval patience{60, 0};
        setsockopt(socket_, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
        setsockopt(socket_, SOL_SOCKET, SO_SNDTIMEO, &patience, sizeof patience);
    }
    ~Client() { leave(); }
    Client(Client&& other) noexcept : socket_(other.socket_), open_(other.open_) {
        other.socket_ = -1;
    }
    Client(const Client&) = delete;
    Client& operator=(const Client&) = delete;
    Client& operator=(Client&&) = delete;

    bool open() const { return open_; }

    void leave() {
        if (socket_ >= 0) close(socket_);
        socket_ = -1;
    }

    /// False when the other side no longer takes anything.
    bool say(std::string_view text) const {
        while (!text.empty()) {
            const ssize_t sent = send(socket_, text.data(), text.size(), MSG_NOSIGNAL);
            if (sent <= 0) return false;
            text.remove_prefix(static_cast<std::size_t>(sent));
        }
        return true;
    }

    /// Reads until `mark` was seen, or the other side closed; all that was read.
    std::string until(const std::string& mark) {
        while (heard_.find(mark) == std::string::npos && read_some()) {
        }
        return heard_;
    }

    /// One whole answer with a Content-Length; empty when the other side closed before.
    std::string answer() {
        std::size_t head = std::string::npos;
        while ((head = heard_.find("\r\n\r\n")) == std::string::npos) {
            if (!read_some()) return "";
        }
        std::size_t length = 0;
        const std::size_t at = heard_.find("Content-Length: ");
        if (at != std::string::npos && at < head) length = std::stoul(heard_.substr(at + 16));
        while (heard_.size() < head + 4 + length) {
            if (!read_some()) return "";
        }
        const std::string whole = heard_.substr(0, head + 4 + length);
        heard_.erase(0, whole.size());
        return whole;
    }

    /// All until the other side closes.
    std::string rest() {
        while (read_some()) {
        }
        return heard_;
    }

    /// Whether the other side has closed, as far as was read.
    bool closed() const { return closed_; }

    /// What was heard and not yet looked at.
    const std::string& heard() const { return heard_; }

private:
    bool read_some() {
        char block[16384];
        const ssize_t got = recv(socket_, block, sizeof block, 0);
        if (got > 0) heard_.append(block, static_cast<std::size_t>(got));
        closed_ = got == 0;
        return got > 0;
    }

    int socket_ = -1;
    bool open_ = false;
    bool closed_ = false;
    std::string heard_;
};

inline int status_of(const std::string& answer) {
    return answer.size() > 12 ? std::atoi(answer.substr(9, 3).c_str()) : 0;
}

inline std::string body_of(const std::string& answer) {
    const std::size_t at = answer.find("\r\n\r\n");
    return at == std::string::npos ? "" : answer.substr(at + 4);
}

inline double milliseconds() {
    const auto now = std::chrono::steady_clock::now().time_since_epoch();
    return std::chrono::duration<double, std::milli>(now).count();
}

/// A server on a port of its own, its store in a folder of its own.
class Serving {
public:
    explicit Serving(const Limits& limits = {}, bool lan = false) {
        start_.port = 0;
        start_.lan = lan;
        start_.store = (program_.folder() / "toft.sqlite").string();
        start_.milliseconds = milliseconds;
        start_.say = [this](const std::string& text) {
            const std::lock_guard lock(mutex_);
            said_ += text;
        };
        start_.signals = false;
        start_.limits = limits;
        begin();
    }
    ~Serving() { end(); }
    Serving(const Serving&) = delete;
    Serving& operator=(const Serving&) = delete;

    void begin() {
        start_.ready = [this](const Running& running) {
            const std::lock_guard lock(mutex_);
            running_ = running;
            const std::size_t colon = running.address.find_last_of(':');
            port_ = std::stoi(running.address.substr(colon + 1));
            ready_.notify_all();
        };
        thread_ = std::thread([this] {
            faults_ = serve(start_);
            const std::lock_guard lock(mutex_);
            ended_ = true;
            ready_.notify_all();
        });
        std::unique_lock lock(mutex_);
        ready_.wait(lock, [this] { return port_ != 0 || ended_; });
    }
    void end() {
        if (!thread_.joinable()) return;
        if (!ended_ && running_.stop) running_.stop();
        thread_.join();
        port_ = 0;
        ended_ = false;
    }

    int port() const { return port_; }
    std::string host() const { return "localhost:" + std::to_string(port_); }
    Client client() const { return Client(port_); }
    const Faults& faults() const { return faults_; }
    std::string said() {
        const std::lock_guard lock(mutex_);
        return said_;
    }

    /// A request with the headers that the page sends.
    std::string request(const std::string& method, const std::string& target,
                        const std::string& body = "", const std::string& more = "") const {
        return method + " " + target + " HTTP/1.1\r\nHost: " + host() +
               "\r\ntoft-page: 1\r\nContent-Type: application/json\r\nContent-Length: " +
               std::to_string(body.size()) + "\r\n" + more + "\r\n" + body;
    }
    /// Its answer, on a connection of its own.
    std::string ask(const std::string& method, const std::string& target,
                    const std::string& body = "", const std::string& more = "") const {
        Client one = client();
        one.say(request(method, target, body, more));
        return one.answer();
    }

private:
    cli::Program program_;
    Start start_{8377,    false, "", failed(Fault{"font", "", "none for this test", "", {}}),
                 nullptr, {},    {}, true,
                 {}};
    std::thread thread_;
    std::mutex mutex_;
    std::condition_variable ready_;
    Running running_;
    Faults faults_;
    std::string said_;
    int port_ = 0;
    bool ended_ = false;
};

}  // namespace toft::server
