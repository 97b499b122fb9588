#pragma once
// The page's files over HTTP: packed for who takes that, and not sent again to who has them.

#include "http/message.h"
#include "server/page_files.h"

namespace toft::server {

/// The file of that path ("/" is "/index.html"), or 404.
Response page_file(const PageFiles& files, const std::string& path, const Headers& headers);

/// What a device sees before it is paired: where to type the code. Empty type for any path but "/"
/// and those of the view itself.
Response pairing_view(const std::string& path);

}  // namespace toft::server
