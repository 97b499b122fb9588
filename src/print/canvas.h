#pragma once
// Cairo's objects as values that clean up after themselves, and what it gives away as bytes.

#include "base/outcome.h"

#include <cairo/cairo.h>

#include <memory>
#include <string>

namespace toft::print {

struct Ends {
    void operator()(cairo_t* pen) const { cairo_destroy(pen); }
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};

using Pen = std::unique_ptr<cairo_t, Ends>;
using Surface = std::unique_ptr<cairo_surface_t, Ends>;

/// A cairo_write_func_t whose closure is a std::string.
cairo_status_t append_bytes(void* text, const unsigned char* bytes, unsigned int count);

/// Fault `print` with cairo's words for what went wrong.
Fault cairo_fault(cairo_status_t status);

}  // namespace toft::print
