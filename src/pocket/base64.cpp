#include "pocket/base64.h"

#include <algorithm>
#include <cstdint>

namespace toft::pocket {

std::string base64(std::string_view bytes) {
    constexpr char signs[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t left = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t three = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            three = three << 8 | (k < left ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            out += k <= left ? signs[three >> (18 - 6 * k) & 63U] : '=';
        }
    }
    return out;
}

}  // namespace toft::pocket
