#include "http/problem.h"

#include "codec/answer.h"
#include "http/json.h"

namespace toft::server {

namespace {

Response written(unsigned status, const Json& body) {
    Response response;
    response.status = status;
    response.type = "application/problem+json";
    response.body = text_of(body);
    dress(response);
    return response;
}

Json problem_json(unsigned status, const std::string& title, const std::string& detail) {
    return {{"type", "about:blank"}, {"title", title}, {"status", status}, {"detail", detail}};
}

constexpr const char* policy =
    "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self' blob:; "
    "img-src 'self' blob: data:; style-src 'self' 'unsafe-inline'; connect-src 'self'; "
    "object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

}  // namespace

Response problem(unsigned status, const std::string& title, const std::string& detail) {
    return written(status, problem_json(status, title, detail));
}

Response problem(unsigned status, const std::string& title, const Faults& faults) {
    Json body = problem_json(status, title, faults.empty() ? "" : faults.front().says);
    body["faults"] = Json::parse(codec::write_faults(faults, codec::Layout::one_line))["faults"];
    return written(status, body);
}

Response busy(const std::string& title) {
    Response response = problem(503, title, "try again in a moment");
    response.headers.emplace_back("Retry-After", "1");
    return response;
}

void dress(Response& response) {
    const auto has = [&](std::string_view name) {
        for (const auto& header : response.headers) {
            if (header.first == name) return true;
        }
        return false;
    };
    const auto add = [&](const char* name, const char* value) {
        if (!has(name)) response.headers.emplace_back(name, value);
    };
    add("Content-Security-Policy", policy);
    add("Cross-Origin-Resource-Policy", "same-origin");
    add("Cross-Origin-Opener-Policy", "same-origin");
    add("X-Content-Type-Options", "nosniff");
    add("X-Frame-Options", "DENY");
    add("Referrer-Policy", "no-referrer");
    add("Cache-Control", "no-store");
}

}  // namespace toft::server
