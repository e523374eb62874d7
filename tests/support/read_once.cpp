// Compiled only so that the headers of its target are (shimwright_read_once).
