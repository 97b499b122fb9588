// A page that stands in until the real one is carried.

#include "server/page_files.h"

namespace toft::server {

namespace {

constexpr PageFile files[] = {
    {"/index.html", "text/html; charset=utf-8", "\"stub\"",
     "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>toft</title><p>toft serves; "
     "this build carries no page. See /api/openapi.json.\n",
     ""},
};

}  // namespace

PageFiles page_files() { return {files, sizeof files / sizeof *files}; }

}  // namespace toft::server
