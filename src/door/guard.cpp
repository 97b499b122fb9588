#include "door/guard.h"

#include "http/problem.h"

#include <algorithm>

namespace toft::server {

namespace {

std::string lower(std::string text) {
    for (char& c : text) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return text;
}

std::string in_url(const std::string& address) {
    return address.find(':') == std::string::npos ? address : "[" + address + "]";
}

std::optional<Response> from_elsewhere(const Headers& headers) {
    if (!headers.origin.empty() && lower(headers.origin) != "http://" + lower(headers.host)) {
        return problem(403, "the page of another place asks",
                       "only the page that this server gave out may ask it");
    }
    const std::string& site = headers.fetch_site;
    if (!site.empty() && site != "same-origin" && site != "none") {
        return problem(403, "the page of another place asks",
                       "type the address of this server into the browser yourself");
    }
    return std::nullopt;
}

}  // namespace

bool host_is_ours(const std::string& host, const Door& door) {
    std::vector<std::string> names = {"localhost", "127.0.0.1", "::1"};
    if (door.lan) names.insert(names.end(), door.addresses.begin(), door.addresses.end());
    const std::string asked = lower(host);
    return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
        const std::string at = in_url(name);
        return asked == at + ":" + std::to_string(door.port) || (door.port == 80 && asked == at);
    });
}

std::optional<Response> refusal(const Request& request, const Door& door) {
    const Headers& headers = request.headers;
    if (headers.hosts != 1) {
        return problem(400, "a request names the host it is meant for, once",
                       "send one Host header");
    }
    if (!host_is_ours(headers.host, door)) {
        return problem(421, "this server does not go by that name",
                       "use the address that toft serve printed");
    }
    if (auto refused = from_elsewhere(headers)) return refused;
    if (!headers.encoding.empty() && lower(headers.encoding) != "identity") {
        return problem(415, "packed bodies are not taken", "send the body as it is");
    }
    if (request.method == Method::other) {
        Response refused = problem(405, "that method is not served", "");
        refused.headers.emplace_back("Allow", "GET, HEAD, POST, PUT, DELETE");
        return refused;
    }
    if (!only_reads(request.method) && headers.page != "1") {
        return problem(403, "the request does not come from the page",
                       "send the header toft-page: 1");
    }
    return std::nullopt;
}

bool is_type(const std::string& sent, std::string_view type) {
    std::string head = lower(sent.substr(0, sent.find(';')));
    while (!head.empty() && head.back() == ' ') head.pop_back();
    return head == type;
}

}  // namespace toft::server
