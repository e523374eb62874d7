#include "owner_only.h"

#include <sys/resource.h>
#include <sys/stat.h>

namespace shimwright::cli {

void keep_to_owner() {
  ::umask(S_IRWXG | S_IRWXO);
  const struct rlimit none = {0, 0};
  ::setrlimit(RLIMIT_CORE, &none);
}

}  // namespace shimwright::cli
