#pragma once
// The routes, described once: requests are led by this table, and the description for other
// programs (OpenAPI) is written from it.

#include "http/message.h"
#include "server/office.h"

#include <map>
#include <string>
#include <vector>

namespace toft::server {

/// A request that was led to its route.
struct Call {
    const Request& request;
    std::map<std::string, std::string> parts = {};  ///< of the path, by name
    std::map<std::string, std::string> query = {};
};

enum class Entry {
    anyone,       ///< devices that are not paired, too
    paired,       ///< this machine and paired devices
    this_machine  ///< nobody else
};

enum class Body { none, json, picture, work };

struct QueryPart {
    const char* name;
    bool required;
    const char* says;
};

struct Gives {
    unsigned status;
    const char* type;   ///< media type; empty for no body
    const char* shape;  ///< name among shapes(); empty where the type says it all
    const char* says;
};

struct Route {
    Method method;
    const char* path;  ///< "/api/jobs/{id}"
    const char* says;
    Entry entry = Entry::paired;
    Worker worker = Worker::desk;
    Body body = Body::none;
    std::size_t body_limit = 0;  ///< bytes
    const char* shape = "";      ///< of the body, among shapes()
    std::vector<QueryPart> query = {};
    std::vector<Gives> gives = {};
    Response (*answer)(Office& office, const Call& call) = nullptr;
};

inline constexpr std::size_t small_body = 1u << 20;
inline constexpr std::size_t work_body = 3u << 20;
inline constexpr std::size_t photo_body = 8u << 20;
inline constexpr std::size_t import_body = 64u << 20;

/// All of them.
const std::vector<Route>& routes();

std::vector<Route> about_routes();
std::vector<Route> exchange_routes();
std::vector<Route> job_routes();
std::vector<Route> pair_routes();
std::vector<Route> paper_routes();
std::vector<Route> photo_routes();
std::vector<Route> price_routes();
std::vector<Route> reading_routes();
std::vector<Route> work_routes();

/// The name of a method as a request line has it.
const char* method_name(Method method);

}  // namespace toft::server
