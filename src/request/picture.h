#pragma once
// A picture of a job as toft-picture/1. Private to request.

#include "gallery/pictures.h"
#include "request/request.h"

namespace toft::request {

/// One of `all`, by name; the first of them where none is named.
std::string picture_of(const std::vector<gallery::Picture>& all, Bench& bench,
                       std::string_view body);

}  // namespace toft::request
