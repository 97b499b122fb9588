#include "support/spoilt_tables.h"

#include <stdexcept>

namespace toft::support {

SpoiltTables::SpoiltTables() {
    const tables::EmbeddedFiles files = tables::embedded_files();
    for (std::size_t i = 0; i < files.count; ++i) {
        names_.emplace_back(files.first[i].name);
        texts_.emplace_back(files.first[i].text);
    }
}

std::string& SpoiltTables::text(const std::string& file) {
    for (std::size_t i = 0; i < names_.size(); ++i) {
        if (names_[i] == file) return texts_[i];
    }
    throw std::logic_error("no table " + file);
}

SpoiltTables& SpoiltTables::change(const std::string& file, const std::string& from,
                                   const std::string& to) {
    std::string& whole = text(file);
    const auto at = whole.find(from);
    if (at == std::string::npos) throw std::logic_error(file + " does not hold " + from);
    whole.replace(at, from.size(), to);
    return *this;
}

SpoiltTables& SpoiltTables::change_all(const std::string& file, const std::string& from,
                                       const std::string& to) {
    change(file, from, to);
    std::string& whole = text(file);
    while (whole.find(from) != std::string::npos) change(file, from, to);
    return *this;
}

SpoiltTables& SpoiltTables::remove(const std::string& file) {
    for (std::size_t i = 0; i < names_.size(); ++i) {
        if (names_[i] != file) continue;
        names_.erase(names_.begin() + static_cast<std::ptrdiff_t>(i));
        texts_.erase(texts_.begin() + static_cast<std::ptrdiff_t>(i));
        return *this;
    }
    throw std::logic_error("no table " + file);
}

SpoiltTables& SpoiltTables::keep_lines(const std::string& file, int lines) {
    std::string& whole = text(file);
    std::size_t at = 0;
    for (int i = 0; i < lines && at != std::string::npos; ++i) {
        at = whole.find('\n', at);
        if (at != std::string::npos) ++at;
    }
    if (at != std::string::npos) whole.resize(at);
    return *this;
}

Faults SpoiltTables::faults() const {
    std::vector<tables::EmbeddedFile> files;
    for (std::size_t i = 0; i < names_.size(); ++i) files.push_back({names_[i], texts_[i]});
    const auto loaded = tables::load_catalogue({files.data(), files.size()});
    return loaded ? Faults{} : loaded.error();
}

bool SpoiltTables::refused(const std::string& pointer, const std::string& words) const {
    for (const Fault& fault : faults()) {
        if (fault.pointer.rfind(pointer, 0) == 0 && fault.says.find(words) != std::string::npos) {
            return true;
        }
    }
    return false;
}

}  // namespace toft::support
