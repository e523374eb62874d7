import unittest

from links import faults
from sample_tree import TreeTest


class Links(TreeTest):
    def test_what_is_there(self):
        tree = self.tree(
            {
                "README.md": "[method](docs/method.md#tray) and [elsewhere](https://example.org/a)",
                "docs/method.md": "[up](../README.md)",
                "docs/guide/README.md": "![bench](pictures/bench.png)",
                "docs/guide/pictures/bench.png": "",
            }
        )
        self.assertEqual(faults(tree), [])

    def test_what_is_not_there(self):
        self.assert_one_fault(faults(self.tree({"docs/a.md": "\n[b](b.md)"})), "docs/a.md:2")
        self.assert_one_fault(faults(self.tree({"README.md": "![b](docs/b.png)"})), "README.md:1")

    def test_a_picture_that_no_text_shows(self):
        self.assert_one_fault(faults(self.tree({"docs/guide/pictures/b.png": ""})), "docs/guide/pictures/b.png")


if __name__ == "__main__":
    unittest.main()
