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

    def test_what_a_store_left(self):
        for left in ("data/demo/photos/0f/" + "0f" * 32, "tests/cli/workshop.shimwright", "docs/a.sw.lock", "docs/a.sw-wal"):
            with self.subTest(left):
                self.assert_one_fault(faults(self.tree({**FULL, left: ""})), left, "was left there by a store")
        kept = {"data/demo/photos/levers.png": "", "tests/cli/" + "0f" * 31: "", "docs/shimwright.txt": ""}
        self.assertEqual(faults(self.tree({**FULL, **kept})), [])


if __name__ == "__main__":
    unittest.main()
