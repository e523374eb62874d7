"""No command writes over what is not of its own kind, least of all over the store."""
import contextlib
import hashlib
import sqlite3

from program import DEMO, Bench, main, run


class Outputs(Bench):
    def setUp(self):
        super().setUp()
        status, _, err = run("make-demo", "--jobs", 1, "--store", self.store)
        self.assertEqual(status, 0, err)
        self.letter = self.folder / "letter.txt"
        self.letter.write_text("Dear Sir or Madam", encoding="utf-8")
        self.photo = self.folder / "photos" / "ab" / "abcd"
        self.photo.parent.mkdir(parents=True)
        self.photo.write_bytes(b"\x89PNG")
        self.link = self.folder / "link.pdf"
        self.link.symlink_to(self.store)
        with contextlib.closing(sqlite3.connect(self.store)) as database:
            self.job = database.execute("SELECT number FROM job").fetchone()[0]

    def commands(self, out):
        here = ("--store", self.store)
        yield ["record", self.job, *here, "--pdf", out]
        yield ["record", self.job, *here, "--json", out]
        yield ["record", self.job, *here, "--slip", out]
        yield ["replay", DEMO[0], *here, "--record", out]
        yield ["sign", self.job, *here, "--person", "MK", "--pdf", out]
        yield ["backup", *here, out]
        yield ["export", self.job, *here, out]
        yield ["measurements", *here, "--csv", out]
        yield ["measurements", *here, "--json", out]
        yield ["vehicle", "TESTVN", *here, "--csv", out]

    def test_what_lies_there_stays(self):
        for there in (self.store, self.letter, self.photo, self.link):
            before = hashlib.sha256(self.store.read_bytes()).hexdigest(), there.read_bytes()
            for words in self.commands(there):
                with self.subTest(" ".join(map(str, words))):
                    self.refused(*words)
                    self.assertEqual((hashlib.sha256(self.store.read_bytes()).hexdigest(), there.read_bytes()), before)

    def test_a_store_that_is_not_there_yet_is_no_place_for_a_record(self):
        new = self.folder / "new.shimwright"
        self.refused("replay", DEMO[0], "--store", new, "--record", new)
        self.assertFalse(new.exists())

    def test_two_files_have_two_places(self):
        out = self.folder / "record"
        self.refused("record", self.job, "--store", self.store, "--pdf", out, "--json", out)
        self.assertFalse(out.exists())

    def test_an_older_file_of_its_kind_is_written_over(self):
        for option, begins in (("--pdf", b"%PDF-"), ("--slip", b"%PDF-"), ("--json", b'{"format":')):
            out = self.folder / ("record" + option)
            for _ in range(2):
                status, _, err = run("record", self.job, "--store", self.store, option, out)
                self.assertEqual((status, err), (0, []))
                self.assertTrue(out.read_bytes().startswith(begins))
        empty = self.folder / "empty.pdf"
        empty.touch()
        self.assertEqual(run("record", self.job, "--store", self.store, "--pdf", empty)[0], 0)


main()
