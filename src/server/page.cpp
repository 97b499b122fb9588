#include "server/page.h"

#include "http/problem.h"

#include <algorithm>

namespace toft::server {

namespace {

bool lists(const std::string& header, std::string_view word) {
    return header.find(word) != std::string::npos;
}

/// Names that carry a digest of what they hold never hold anything else.
bool lasting_name(std::string_view path) { return path.rfind("/page/", 0) == 0; }

}  // namespace

Response page_file(const PageFiles& files, const std::string& asked, const Headers& headers) {
    const std::string path = asked == "/" ? "/index.html" : asked;
    const auto found = std::find_if(files.begin(), files.end(),
                                    [&](const PageFile& file) { return file.path == path; });
    if (found == files.end()) return problem(404, "there is nothing here", "");
    Response response;
    response.type = std::string(found->type);
    response.headers = {
        {"ETag", std::string(found->etag)},
        {"Vary", "Accept-Encoding"},
        {"Cache-Control", lasting_name(path) ? "max-age=31536000, immutable" : "no-cache"}};
    if (lists(headers.if_none_match, found->etag)) {
        response.status = 304;
    } else if (!found->gz.empty() && lists(headers.accept_encoding, "gzip")) {
        response.headers.emplace_back("Content-Encoding", "gzip");
        response.lasting = found->gz;
    } else {
        response.lasting = found->raw;
    }
    return response;
}

}  // namespace toft::server
