#include "http/wire.h"

#include <fmt/format.h>

#include <ctime>

namespace toft::server {

namespace {

struct Reason {
    unsigned status;
    const char* words;
};

constexpr Reason reasons[] = {
    {200, "OK"},
    {201, "Created"},
    {204, "No Content"},
    {304, "Not Modified"},
    {400, "Bad Request"},
    {401, "Unauthorized"},
    {403, "Forbidden"},
    {404, "Not Found"},
    {405, "Method Not Allowed"},
    {409, "Conflict"},
    {413, "Content Too Large"},
    {415, "Unsupported Media Type"},
    {421, "Misdirected Request"},
    {422, "Unprocessable Content"},
    {429, "Too Many Requests"},
    {431, "Request Header Fields Too Large"},
    {500, "Internal Server Error"},
    {503, "Service Unavailable"},
};

const char* reason(unsigned status) {
    for (const Reason& one : reasons) {
        if (one.status == status) return one.words;
    }
    return "";
}

void add(std::string& head, std::string_view name, std::string_view value) {
    head += name;
    head += ": ";
    for (const char c : value) head += static_cast<unsigned char>(c) < 0x20 || c == 0x7f ? ' ' : c;
    head += "\r\n";
}

std::string date() {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    gmtime_r(&now, &parts);
    char text[40] = "";
    std::strftime(text, sizeof text, "%a, %d %b %Y %H:%M:%S GMT", &parts);
    return text;
}

}  // namespace

std::string head_of(const Response& response, std::size_t body_size, const WireMode& mode) {
    std::string head = fmt::format("HTTP/1.1 {} {}\r\n", response.status, reason(response.status));
    add(head, "Date", date());
    if (!response.type.empty()) add(head, "Content-Type", response.type);
    for (const auto& [name, value] : response.headers) add(head, name, value);
    const bool bodyless = response.status == 204 || response.status == 304;
    if (!response.channel && !bodyless) add(head, "Content-Length", fmt::to_string(body_size));
    add(head, "Connection", mode.keep_alive && !response.channel ? "keep-alive" : "close");
    return head + "\r\n";
}

Method method_of(const std::string& name) {
    if (name == "GET") return Method::get;
    if (name == "HEAD") return Method::head;
    if (name == "POST") return Method::post;
    if (name == "PUT") return Method::put;
    return name == "DELETE" ? Method::remove : Method::other;
}

Headers headers_of(const std::function<std::string(const char*)>& value) {
    Headers headers;
    headers.host = value("Host");
    headers.origin = value("Origin");
    headers.fetch_site = value("Sec-Fetch-Site");
    headers.page = value("toft-page");
    headers.by = value("toft-by");
    headers.type = value("Content-Type");
    headers.encoding = value("Content-Encoding");
    headers.accept = value("Accept");
    headers.accept_encoding = value("Accept-Encoding");
    headers.if_none_match = value("If-None-Match");
    headers.cookie = value("Cookie");
    return headers;
}

bool ends_clearly(const Framing& framing) {
    if (framing.codings == 0) return true;
    std::string coding = framing.transfer_encoding;
    for (char& c : coding) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return framing.codings == 1 && framing.version >= 11 && coding == "chunked";
}

bool has_folded_line(std::string_view head) {
    head = head.substr(0, head.find("\r\n\r\n"));
    for (std::size_t at = head.find('\n'); at != std::string_view::npos;
         at = head.find('\n', at + 1)) {
        if (at + 1 < head.size() && (head[at + 1] == ' ' || head[at + 1] == '\t')) return true;
    }
    return false;
}

Faults listening_fault(const Unheard& unheard) {
    const std::string says =
        unheard.taken
            ? fmt::format(
                  "port {} of {} is taken by another program (perhaps toft serves already); "
                  "end that one or name another port with --port",
                  unheard.port, unheard.address)
            : fmt::format("nothing can listen on port {} of {}: {}; name another port with --port",
                          unheard.port, unheard.address, unheard.why);
    return {{"port", "--port", says, "", {}}};
}

}  // namespace toft::server
