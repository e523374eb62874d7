#pragma once

#include "shimwright/shell/page_table.h"

/// The one place that names the classes of the pages.
namespace shimwright::shell {

[[nodiscard]] PluggedPage plug_home(const PageHouse& house);
[[nodiscard]] PluggedPage plug_new_job(const PageHouse& house);
[[nodiscard]] PluggedPage plug_job(const PageHouse& house);
[[nodiscard]] PluggedPage plug_past_jobs(const PageHouse& house);
[[nodiscard]] PluggedPage plug_vehicle(const PageHouse& house);
[[nodiscard]] PluggedPage plug_record(const PageHouse& house);
[[nodiscard]] PluggedPage plug_workshop(const PageHouse& house);

}  // namespace shimwright::shell
