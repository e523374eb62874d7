import unittest

from sample_tree import TreeTest
from top_level import ALLOWED, faults

FULL = {name if "." in name or name == "LICENSE" else f"{name}/file": "" for name in ALLOWED}


class TopLevel(TreeTest):
    def test_as_it_should_be(self):
        self.assertEqual(faults(self.tree({**FULL, ".clang-format": "", "build/x": ""})), [])

    def test_a_folder_too_many(self):
        self.assert_one_fault(faults(self.tree({**FULL, "scripts/a.sh": ""})), "scripts: does not belong")

    def test_a_file_missing(self):
        files = {name: text for name, text in FULL.items() if name != "LICENSE"}
        self.assert_one_fault(faults(self.tree(files)), "LICENSE: is missing")


if __name__ == "__main__":
    unittest.main()
