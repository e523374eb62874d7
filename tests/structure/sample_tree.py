"""A small tree of files for the self-tests, thrown away at the end of each."""

import tempfile
import unittest
from pathlib import Path

from source_tree import SourceTree


class TreeTest(unittest.TestCase):
    def tree(self, files):
        """`{"src/shim/a.cpp": "text"}` on disk."""
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        for name, text in files.items():
            path = Path(folder.name) / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")
        return SourceTree(folder.name)

    def assert_one_fault(self, faults, *parts):
        self.assertEqual(len(faults), 1, faults)
        for part in parts:
            self.assertIn(part, faults[0])
