// The only file that knows Boost. One thread reads and writes; pools of threads make the answers.

#include "http/http.h"

#include "http/pool.h"
#include "http/problem.h"
#include "http/wire.h"

#include <fmt/format.h>
#include <boost/asio.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>

#include <array>
#include <cstdlib>
#include <map>
#include <set>

namespace toft::server {

namespace {

namespace net = boost::asio;
namespace beast = boost::beast;
namespace http = beast::http;
using tcp = net::ip::tcp;
using Error = boost::system::error_code;
using Parser = http::request_parser<http::string_body>;
template <class T>
using Awaitable = net::awaitable<T>;

auto noting(Error& error) { return net::redirect_error(net::use_awaitable, error); }

std::string text_of(beast::string_view text) { return std::string(text.data(), text.size()); }

Request request_of(const Parser& parser, const Peer& peer) {
    const auto& message = parser.get();
    Request request;
    request.method = method_of(text_of(message.method_string()));
    request.target = text_of(message.target());
    request.headers = headers_of([&](const char* name) { return text_of(message[name]); });
    request.headers.hosts = static_cast<int>(message.count(http::field::host));
    request.peer = peer;
    return request;
}

Framing framing_of(const Parser& parser) {
    constexpr auto coding = http::field::transfer_encoding;
    return {parser.get().version(), parser.get().count(coding), text_of(parser.get()[coding])};
}

/// What a connection that could not be read is told; none where nobody would hear it.
std::optional<Response> complaint(const Error& error) {
    if (error == http::error::header_limit) {
        return problem(431, "the headers are too long", "send no more than 16 KiB of them");
    }
    if (error == http::error::body_limit) {
        return problem(413, "the body is too large", "send less at once");
    }
    if (error == http::error::end_of_stream || error == http::error::partial_message) return {};
    if (error.category() == make_error_code(http::error::bad_method).category()) {
        return problem(400, "this is no HTTP/1.1 request", "see RFC 9112");
    }
    return {};
}

class Beast;

/// One connection. Whoever starts `run` or `turn_away` keeps it until they end.
class Session : public std::enable_shared_from_this<Session> {
public:
    Session(Beast& server, tcp::socket socket, Peer peer)
        : server_(server), stream_(std::move(socket)), timer_(stream_.get_executor()), peer_(peer) {
        timer_.expires_at(std::chrono::steady_clock::time_point::max());
    }
    Awaitable<void> run();
    Awaitable<void> turn_away();
    void leave();
    const Peer& peer() const { return peer_; }

private:
    Awaitable<bool> turn();
    Awaitable<bool> read_head(Parser& parser);
    Awaitable<bool> read_body(Parser& parser, const Admission& admission);
    Awaitable<Response> worked(Request request, Worker worker);
    Awaitable<bool> write(Response response, const WireMode& mode);
    Awaitable<bool> send(std::string_view bytes);
    Awaitable<void> send_events(std::shared_ptr<Channel> channel);
    Awaitable<void> close_kindly();
    Awaitable<bool> complain(Error error);
    void watch(std::function<void()> on_gone);

    Beast& server_;
    beast::tcp_stream stream_;
    beast::flat_buffer buffer_;
    net::steady_timer timer_;  ///< wakes who waits for a worker or for events
    Peer peer_;
    std::shared_ptr<std::atomic<bool>> gone_;
    std::shared_ptr<Channel> channel_;
    bool busy_ = false;  ///< a request is there and is being answered
};

/// The listener.
class Beast : public Server {
public:
    explicit Beast(const Listening& listening) : limits(listening.limits), signals_(io_) {
        ends_program_ = listening.signals;
        if (listening.signals) {
            signals_.add(SIGINT);
            signals_.add(SIGTERM);
        }
    }
    ~Beast() override {
        desk_.reset();
        bench_.reset();
    }

    Faults listen(const Listening& listening);
    std::uint16_t port() const override { return port_; }
    void run(const Service& service) override;
    void stop() override {
        net::post(io_, [this] { begin_to_stop(); });
    }

    bool stopping() const { return stopping_; }
    bool give(Worker worker, std::function<void()> task) {
        return (worker == Worker::bench ? bench_ : desk_)->give(std::move(task));
    }
    void enter(Session* session);
    void forget(Session* session);

    const Limits limits;
    const Service* service = nullptr;

private:
    Awaitable<void> accept(tcp::acceptor& acceptor);
    bool room_for(const Peer& peer) const;
    void begin_to_stop();

    net::io_context io_{1};
    net::signal_set signals_;
    net::steady_timer grace_{io_};
    std::vector<tcp::acceptor> acceptors_;
    std::set<Session*> sessions_;
    std::map<std::string, std::size_t> of_peer_;
    std::uint16_t port_ = 0;
    bool stopping_ = false;
    bool ends_program_ = false;
    std::unique_ptr<Pool> desk_;
    std::unique_ptr<Pool> bench_;
};

Awaitable<void> Session::run() {
    bool more = true;
    while (more) more = co_await turn();
    co_await close_kindly();
    server_.forget(this);
}

Awaitable<void> Session::turn_away() {
    Response full = busy("too many connections are open");
    constexpr WireMode mode{false};
    co_await write(std::move(full), mode);
    co_await close_kindly();
}

void Session::leave() {
    if (gone_) *gone_ = true;
    if (channel_) {
        channel_->leave();
        timer_.cancel();
    }
    if (!busy_) stream_.cancel();
}

// g++ 12 makes wrong code of co_await within conditions and of temporaries that live across one:
// each stands alone, on names.

/// One request and its answer; whether another may follow.
Awaitable<bool> Session::turn() {
    Parser parser;
    parser.header_limit(static_cast<std::uint32_t>(server_.limits.header));
    parser.body_limit(std::numeric_limits<std::uint64_t>::max());  // until the route is known
    const bool headed = co_await read_head(parser);
    if (!headed) co_return false;
    Request request = request_of(parser, peer_);
    Admission admission = server_.service->admit(request);
    WireMode mode{parser.keep_alive() && !server_.stopping(), request.method == Method::head};
    Response response;
    if (admission.refusal) {
        mode.keep_alive = mode.keep_alive && parser.is_done();
        response = std::move(*admission.refusal);
    } else {
        const bool bodied = co_await read_body(parser, admission);
        if (!bodied) co_return false;
        request.body = std::move(parser.get().body());
        if (admission.worker == Worker::at_once) {
            response = server_.service->answer(request);
        } else {
            response = co_await worked(std::move(request), admission.worker);
        }
    }
    const bool written = co_await write(std::move(response), mode);
    co_return written&& mode.keep_alive && !server_.stopping();
}

/// The last word on this connection, where anybody would hear it.
Awaitable<bool> Session::complain(Error error) {
    std::optional<Response> said = complaint(error);
    constexpr WireMode mode{false};
    if (said) co_await write(std::move(*said), mode);
    co_return false;
}

Awaitable<bool> Session::read_head(Parser& parser) {
    Error error;
    busy_ = false;
    if (buffer_.size() == 0) {
        stream_.expires_after(server_.limits.idle_time);
        const auto room = buffer_.prepare(4096);
        const std::size_t got = co_await stream_.async_read_some(room, noting(error));
        if (error || server_.stopping()) co_return false;
        buffer_.commit(got);
    }
    stream_.expires_after(server_.limits.header_time);
    while (!parser.is_header_done() && !error) {
        const net::const_buffer got = buffer_.data();
        const std::string_view head(static_cast<const char*>(got.data()), got.size());
        if (has_folded_line(head)) error = http::error::bad_obs_fold;
        if (!error) buffer_.consume(parser.put(got, error));
        if (error != http::error::need_more) continue;
        const auto room = buffer_.prepare(4096);
        const std::size_t more = co_await stream_.async_read_some(room, noting(error));
        buffer_.commit(more);
    }
    busy_ = true;
    if (!error && !ends_clearly(framing_of(parser))) error = http::error::bad_transfer_encoding;
    if (!error) co_return true;
    const bool more = co_await complain(error);
    co_return more;
}

Awaitable<bool> Session::read_body(Parser& parser, const Admission& admission) {
    const auto length = parser.content_length();
    if (length && *length > admission.body_limit) {
        const bool more = co_await complain(http::error::body_limit);
        co_return more;
    }
    parser.body_limit(admission.body_limit);
    if (parser.is_done()) co_return true;
    if (beast::iequals(parser.get()[http::field::expect], "100-continue")) {
        const bool told = co_await send("HTTP/1.1 100 Continue\r\n\r\n");
        if (!told) co_return false;
    }
    Error error;
    stream_.expires_after(server_.limits.body_time);
    co_await http::async_read(stream_, buffer_, parser, noting(error));
    if (!error) co_return true;
    const bool more = co_await complain(error);
    co_return more;
}

/// Calls `on_gone` if the other side closes before it sends anything more.
void Session::watch(std::function<void()> on_gone) {
    stream_.socket().async_wait(
        tcp::socket::wait_read, [self = shared_from_this(), on_gone](const Error& error) {
            if (error) return;
            char next = 0;
            Error peeked;
            self->stream_.socket().non_blocking(true, peeked);
            const std::size_t got = self->stream_.socket().receive(
                net::buffer(&next, 1), tcp::socket::message_peek, peeked);
            if ((peeked && peeked != net::error::would_block) || (!peeked && got == 0)) on_gone();
        });
}

Awaitable<Response> Session::worked(Request request, Worker worker) {
    struct Pending {
        std::optional<Response> response;
    };
    const auto pending = std::make_shared<Pending>();
    gone_ = request.gone;
    const auto executor = stream_.get_executor();
    auto asked = std::make_shared<Request>(std::move(request));
    const bool taken = server_.give(worker, [this, self = shared_from_this(), pending, asked,
                                             executor, service = server_.service] {
        auto made = std::make_shared<Response>(service->answer(*asked));
        const auto then = std::move(made->then);
        net::post(executor, [self, pending, made] {
            pending->response = std::move(*made);
            self->timer_.cancel();
        });
        if (then) then();
    });
    if (!taken) co_return busy("too much waits to be done");
    stream_.expires_never();
    watch([gone = gone_] { *gone = true; });
    Error error;
    while (!pending->response) co_await timer_.async_wait(noting(error));
    stream_.socket().cancel(error);
    gone_.reset();
    co_return std::move(*pending->response);
}

Awaitable<bool> Session::send(std::string_view bytes) {
    constexpr std::size_t piece = 256u << 10;
    Error error;
    while (!bytes.empty() && !error) {
        const std::string_view now = bytes.substr(0, piece);
        stream_.expires_after(server_.limits.write_time);
        co_await net::async_write(stream_, net::buffer(now.data(), now.size()), noting(error));
        bytes.remove_prefix(now.size());
    }
    co_return !error;
}

Awaitable<bool> Session::write(Response response, const WireMode& mode) {
    const std::string_view body = response.lasting.empty() ? response.body : response.lasting;
    std::string head = head_of(response, body.size(), mode);
    if (response.channel && !mode.head_only) {
        const bool begun = co_await send(head);
        if (begun) co_await send_events(response.channel);
        response.channel->leave();
        co_return false;
    }
    constexpr std::size_t at_once = 64u << 10;  // in one piece with the headers
    const bool bodyless = mode.head_only || body.empty() || response.status == 304;
    if (!bodyless && body.size() <= at_once) head += body;
    const bool sent = co_await send(head);
    if (!sent || bodyless || body.size() <= at_once) co_return sent;
    const bool whole = co_await send(body);
    co_return whole;
}

Awaitable<void> Session::send_events(std::shared_ptr<Channel> channel) {
    channel_ = channel;
    const auto executor = stream_.get_executor();
    const std::weak_ptr<Session> weak = weak_from_this();
    channel->wake_by([executor, weak] {
        net::post(executor, [weak] {
            if (const auto self = weak.lock()) self->timer_.cancel();
        });
    });
    watch([this, channel] {
        channel->leave();
        timer_.cancel();
    });
    for (;;) {
        const Channel::Taken taken = channel->take();
        if (!taken.text.empty()) {
            const bool sent = co_await send(taken.text);
            if (!sent) break;
        }
        if (taken.last || channel->gone()) break;
        if (!taken.text.empty()) continue;
        Error error;
        stream_.expires_never();
        timer_.expires_after(server_.limits.heartbeat);
        co_await timer_.async_wait(noting(error));
        if (error) continue;  // woken
        const bool alive = co_await send(": still here\n\n");
        if (!alive) break;
    }
    channel_.reset();
}

/// Lets the other side read what was said before the connection is gone.
Awaitable<void> Session::close_kindly() {
    Error error;
    stream_.socket().shutdown(tcp::socket::shutdown_send, error);
    std::array<char, 4096> rest{};
    stream_.expires_after(std::chrono::seconds(1));
    for (std::size_t read = 0; !error && read < (1u << 20);) {
        const std::size_t got = co_await stream_.async_read_some(net::buffer(rest), noting(error));
        read += got;
    }
    stream_.close();
}

Error open_at(tcp::acceptor& acceptor, const tcp::endpoint& where) {
    Error error;
    acceptor.open(where.protocol(), error);
    if (!error) acceptor.set_option(net::socket_base::reuse_address(true), error);
    if (!error && where.address().is_v6()) acceptor.set_option(net::ip::v6_only(true), error);
    if (!error) acceptor.bind(where, error);
    if (!error) acceptor.listen(net::socket_base::max_listen_connections, error);
    return error;
}

Faults Beast::listen(const Listening& listening) {
    port_ = listening.port;
    for (const std::string& text : listening.addresses) {
        Error error;
        const auto address = net::ip::make_address(text, error);
        tcp::acceptor acceptor(io_);
        if (!error) error = open_at(acceptor, {address, port_});
        if (error && (acceptors_.empty() || error == net::error::address_in_use)) {
            return listening_fault(
                {text, port_, error == net::error::address_in_use, error.message()});
        }
        if (error) continue;  // a machine without that address
        port_ = acceptor.local_endpoint().port();
        acceptors_.push_back(std::move(acceptor));
    }
    return {};
}

void Beast::run(const Service& serving) {
    Error ignored;
    service = &serving;
    desk_ = std::make_unique<Pool>(limits.desk_threads, limits.waiting_desk);
    bench_ = std::make_unique<Pool>(limits.bench_threads, limits.waiting_bench);
    signals_.async_wait([this](const Error& error, int) {
        if (!error) begin_to_stop();
    });
    for (tcp::acceptor& acceptor : acceptors_) {
        net::co_spawn(io_, accept(acceptor), net::detached);
    }
    io_.run();
    signals_.clear(ignored);  // whoever asks again ends the program at once
    desk_->stop();
    const bool ended = bench_->ended_within(limits.grace);
    if (!ended && ends_program_) std::_Exit(0);  // all that was answered is on the disk
    bench_->stop();
}

bool Beast::room_for(const Peer& peer) const {
    if (sessions_.size() >= limits.connections) return false;
    const auto found = of_peer_.find(peer.address);
    return peer.loopback || found == of_peer_.end() || found->second < limits.of_one_peer;
}

Awaitable<void> Beast::accept(tcp::acceptor& acceptor) {
    while (!stopping_) {
        Error error;
        tcp::socket socket = co_await acceptor.async_accept(noting(error));
        if (error == net::error::operation_aborted || stopping_) co_return;
        Error unknown;
        const auto remote = error ? tcp::endpoint() : socket.remote_endpoint(unknown);
        if (error || unknown) {  // perhaps no descriptor is left: breathe
            net::steady_timer breath(io_, std::chrono::milliseconds(error ? 50 : 0));
            co_await breath.async_wait(noting(unknown));
            continue;
        }
        socket.set_option(tcp::no_delay(true), error);
        const Peer peer{remote.address().to_string(), remote.address().is_loopback()};
        const auto session = std::make_shared<Session>(*this, std::move(socket), peer);
        if (!room_for(peer)) {
            net::co_spawn(
                io_, [session] { return session->turn_away(); }, net::detached);
            continue;
        }
        enter(session.get());
        net::co_spawn(
            io_, [session] { return session->run(); }, net::detached);
    }
}

void Beast::enter(Session* session) {
    sessions_.insert(session);
    ++of_peer_[session->peer().address];
}

void Beast::forget(Session* session) {
    sessions_.erase(session);
    const auto found = of_peer_.find(session->peer().address);
    if (found != of_peer_.end() && --found->second == 0) of_peer_.erase(found);
    if (stopping_ && sessions_.empty()) io_.stop();
}

void Beast::begin_to_stop() {
    if (stopping_) {
        io_.stop();
        return;
    }
    stopping_ = true;
    Error error;
    for (tcp::acceptor& acceptor : acceptors_) acceptor.close(error);
    for (Session* session : sessions_) session->leave();
    if (sessions_.empty()) io_.stop();
    grace_.expires_after(limits.grace);
    grace_.async_wait([this](const Error& waited) {
        if (!waited) io_.stop();
    });
    signals_.async_wait([this](const Error& waited, int) {
        if (!waited) io_.stop();
    });
}

}  // namespace

Outcome<std::unique_ptr<Server>> Server::open(const Listening& listening) {
    auto server = std::make_unique<Beast>(listening);
    Faults faults = server->listen(listening);
    if (!faults.empty()) return failed(std::move(faults));
    return std::unique_ptr<Server>(std::move(server));
}

}  // namespace toft::server
