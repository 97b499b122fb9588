#pragma once
// The parts of a job file, one reader each. Private to codec.

#include "codec/reader.h"
#include "tables/catalogue.h"

namespace toft::codec {

void read_intake(Reader& in, site::Job& job);
void read_ground(Reader& in, const tables::Catalogue& catalogue, site::Job& job);
void read_buildings(Reader& in, site::Job& job);
void read_runs(Reader& in, site::Job& job);
void read_wishes(Reader& in, site::Job& job);

/// {"standard", "curve", "rating_a"}; standards of the trade, whether or not a run may use them.
std::optional<site::NamedDevice> read_device(Reader& in, const char* key);

/// Words for cable families that a run may be built with.
const std::vector<std::string>& offered_families();

}  // namespace toft::codec
