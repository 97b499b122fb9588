#include "server/site.h"

#include "http/problem.h"
#include "http/target.h"
#include "server/page.h"
#include "server/route.h"

#include <algorithm>
#include <exception>

namespace toft::server {

namespace {

bool of_api(const Target& target) { return target.parts.front() == "api"; }

bool let_in(const Office& office, const Request& request) {
    return request.peer.loopback || !office.door.lan ||
           office.devices.known(secrets_in(request.headers.cookie, office.door.port));
}

struct Found {
    const Route* route = nullptr;
    std::map<std::string, std::string> parts = {};
    std::string allow = {};  ///< methods of that path, where another was asked for
};

Found find(Method method, const Target& target) {
    Found found;
    const Method asked = method == Method::head ? Method::get : method;
    for (const Route& route : routes()) {
        auto parts = matched(route.path, target.parts);
        if (!parts) continue;
        if (route.method == asked) return {&route, std::move(*parts), ""};
        found.allow += (found.allow.empty() ? "" : ", ") + std::string(method_name(route.method));
    }
    return found;
}

Response not_found(const Found& found) {
    if (found.allow.empty()) return problem(404, "there is nothing here");
    Response response = problem(405, "that is not done here", "done here: " + found.allow);
    response.headers.emplace_back("Allow", found.allow);
    return response;
}

bool type_fits(Body body, const std::string& type) {
    switch (body) {
        case Body::none:
            return true;
        case Body::json:
        case Body::work:
            return is_type(type, "application/json");
        case Body::picture:
            return is_type(type, "image/jpeg") || is_type(type, "image/png") ||
                   is_type(type, "image/webp");
    }
    return false;
}

std::optional<Response> unwelcome(const Office& office, const Request& request,
                                  const Route& route) {
    if (route.entry != Entry::anyone && !let_in(office, request)) {
        return problem(401, "this device is not paired",
                       "open the address of toft and type the code on its screen");
    }
    if (route.entry == Entry::this_machine && !request.peer.loopback) {
        return problem(403, "only the machine that runs toft may do that");
    }
    if (!type_fits(route.body, request.headers.type)) {
        return problem(415, "the body is of a type that is not taken here",
                       route.body == Body::picture ? "image/jpeg, image/png or image/webp"
                                                   : "application/json");
    }
    return std::nullopt;
}

Admission turned_away(Response refusal) {
    dress(refusal);
    Admission admission;
    admission.refusal = std::move(refusal);
    return admission;
}

Admission admit(const Office& office, const Request& request) {
    if (auto refused = refusal(request, office.door)) return turned_away(std::move(*refused));
    const auto target = read_target(request.target);
    if (!target) return turned_away(problem(400, "that is no path of this server"));
    if (!of_api(*target)) {
        if (only_reads(request.method)) return {};
        Response refused = problem(405, "the page is only read");
        refused.headers.emplace_back("Allow", "GET, HEAD");
        return turned_away(std::move(refused));
    }
    const Found found = find(request.method, *target);
    if (!found.route) {
        return turned_away(let_in(office, request) ? not_found(found)
                                                   : problem(401, "this device is not paired"));
    }
    if (auto refused = unwelcome(office, request, *found.route)) {
        return turned_away(std::move(*refused));
    }
    return {{}, found.route->body_limit, found.route->worker};
}

Response page_answer(const Office& office, const PageFiles& page, const Request& request) {
    const std::string path = read_target(request.target)->path;
    if (let_in(office, request)) return page_file(page, path, request.headers);
    Response shown = pairing_view(path);
    return shown.type.empty() ? problem(401, "this device is not paired") : shown;
}

/// What is changed is signed as whoever does it calls themselves, or not at all.
std::optional<Response> odd_author(const Request& request) {
    if (only_reads(request.method)) return std::nullopt;
    const auto by = undone(request.headers.by);
    if (by && by->size() <= store::longest_author) return std::nullopt;
    return problem(400, "the author's name cannot be kept",
                   "choose one of at most " + std::to_string(store::longest_author) +
                       " bytes without control characters");
}

Response api_answer(Office& office, const Request& request, Target target) {
    Found found = find(request.method, target);
    if (!found.route) return not_found(found);
    const Call call{request, std::move(found.parts), std::move(target.query)};
    for (const auto& [name, value] : call.query) {
        const auto& query = found.route->query;
        const bool known = std::any_of(query.begin(), query.end(),
                                       [&](const QueryPart& part) { return part.name == name; });
        if (!known) return problem(400, "the query says something that is not known here", name);
    }
    if (auto refused = odd_author(request)) return std::move(*refused);
    return found.route->answer(office, call);
}

Response answer(Office& office, const PageFiles& page, const Request& request) {
    try {
        auto target = read_target(request.target);
        Response made = of_api(*target) ? api_answer(office, request, std::move(*target))
                                        : page_answer(office, page, request);
        dress(made);
        return made;
    } catch (const std::exception& error) {
        return problem(500, "toft itself is at fault", error.what());
    }
}

}  // namespace

Service service_of(Office& office, const PageFiles& page) {
    Service service;
    service.admit = [&office](const Request& request) { return admit(office, request); };
    service.answer = [&office, &page](const Request& request) {
        return answer(office, page, request);
    };
    return service;
}

}  // namespace toft::server
