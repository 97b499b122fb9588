#pragma once
// A request and its answer as the rest of the server sees them: no sockets, no library of HTTP.

#include "http/channel.h"

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace toft::server {

enum class Method { get, head, post, put, remove, other };

/// GET, HEAD and nothing else.
inline bool only_reads(Method method) { return method == Method::get || method == Method::head; }

/// What is read of a request's headers; empty where one was not sent.
struct Headers {
    int hosts = 0;  ///< how many Host headers were sent
    std::string host;
    std::string origin;
    std::string fetch_site;  ///< Sec-Fetch-Site
    std::string page;        ///< toft-page
    std::string by;          ///< toft-by, percent-encoded
    std::string type;        ///< Content-Type
    std::string encoding;    ///< Content-Encoding
    std::string accept;
    std::string accept_encoding;
    std::string if_none_match;
    std::string cookie;
};

struct Peer {
    std::string address;
    bool loopback = true;  ///< on this machine
};

struct Request {
    Method method = Method::get;
    std::string target;  ///< path and query, as sent
    Headers headers;
    std::string body;
    Peer peer;
    /// Set when who asked has gone away; what works for them may stop. Never null.
    std::shared_ptr<std::atomic<bool>> gone = std::make_shared<std::atomic<bool>>(false);
};

struct Response {
    unsigned status = 200;
    std::string type;
    std::vector<std::pair<std::string, std::string>> headers = {};
    std::string body = {};
    std::string_view lasting = {};          ///< in place of `body`: bytes that outlive the server
    std::shared_ptr<Channel> channel = {};  ///< in place of both: events as they come
    std::function<void()> then = {};        ///< done after the answer has begun, by its worker
};

/// Who makes an answer.
enum class Worker {
    at_once,  ///< whoever reads the request: it takes no time
    desk,     ///< looks into the store
    bench     ///< computes
};

/// What is said when the headers of a request are known and before its body is read.
struct Admission {
    std::optional<Response> refusal = {};
    std::size_t body_limit = 0;  ///< bytes
    Worker worker = Worker::at_once;
};

/// What serves. Both may be called by several threads at once.
struct Service {
    std::function<Admission(const Request&)> admit;
    std::function<Response(const Request&)> answer;
};

}  // namespace toft::server
