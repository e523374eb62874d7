#pragma once

#include "shimwright/shell/page_table.h"

/// The one place that names the classes of the pages.
namespace shimwright::shell {

[[nodiscard]] PluggedPage plug_home(bench::Workbench& bench, const Settings& settings, const PageLinks& links,
                                    QWidget* parent);
[[nodiscard]] PluggedPage plug_new_job(bench::Workbench& bench, const Settings& settings, const PageLinks& links,
                                       QWidget* parent);
[[nodiscard]] PluggedPage plug_job(bench::Workbench& bench, const Settings& settings, const PageLinks& links,
                                   QWidget* parent);
[[nodiscard]] PluggedPage plug_past_jobs(bench::Workbench& bench, const Settings& settings, const PageLinks& links,
                                         QWidget* parent);
[[nodiscard]] PluggedPage plug_record(bench::Workbench& bench, const Settings& settings, const PageLinks& links,
                                      QWidget* parent);
[[nodiscard]] PluggedPage plug_workshop(bench::Workbench& bench, const Settings& settings, const PageLinks& links,
                                        QWidget* parent);

}  // namespace shimwright::shell
