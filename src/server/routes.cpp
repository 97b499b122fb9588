#include "server/route.h"

namespace toft::server {

const std::vector<Route>& routes() {
    static const std::vector<Route> all = [] {
        std::vector<Route> table;
        for (auto* of_subject :
             {about_routes, pair_routes, job_routes, photo_routes, reading_routes, paper_routes,
              price_routes, exchange_routes, work_routes}) {
            for (Route& route : of_subject()) table.push_back(std::move(route));
        }
        return table;
    }();
    return all;
}

const char* method_name(Method method) {
    switch (method) {
        case Method::get:
            return "GET";
        case Method::head:
            return "HEAD";
        case Method::post:
            return "POST";
        case Method::put:
            return "PUT";
        case Method::remove:
            return "DELETE";
        case Method::other:
            break;
    }
    return "";
}

}  // namespace toft::server
