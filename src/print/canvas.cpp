#include "print/canvas.h"

#include <fmt/format.h>

namespace toft::print {

cairo_status_t append_bytes(void* text, const unsigned char* bytes, unsigned int count) {
    static_cast<std::string*>(text)->append(reinterpret_cast<const char*>(bytes), count);
    return CAIRO_STATUS_SUCCESS;
}

Fault cairo_fault(cairo_status_t status) {
    return {"print",
            "",
            fmt::format("the drawing cannot be printed: {}", cairo_status_to_string(status)),
            "",
            {}};
}

}  // namespace toft::print
