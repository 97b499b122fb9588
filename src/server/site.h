#pragma once
// The whole of what is served: guards, pairing, routes and the page.

#include "http/message.h"
#include "server/office.h"
#include "server/page_files.h"

namespace toft::server {

/// Both must outlive what it gives.
Service service_of(Office& office, const PageFiles& page);

}  // namespace toft::server
