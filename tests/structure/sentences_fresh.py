"""The translations hold the sentences of the sources and no others: the translation tools, run on a copy, change nothing.

sentences_fresh.py FOLDER TOOL [its words]: the tool is called in FOLDER as the target `sentences` calls it."""

import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from sentences import FOLDER


def main(root, tool):
    names = sorted((Path(root) / FOLDER).glob("*.ts"))
    with tempfile.TemporaryDirectory() as folder:
        copies = [shutil.copy(name, folder) for name in names]
        subprocess.run([*tool, "-silent", "-ts", *copies], cwd=root, check=True)
        stale = [name.name for name, copy in zip(names, copies) if name.read_bytes() != Path(copy).read_bytes()]
    for name in stale:
        print(f"{FOLDER}/{name}: the sources say other sentences by now; build the target `sentences` and translate them.")
    return 1 if stale else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2:]))
