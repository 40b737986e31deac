"""Lists made public: starting times, results and the ballot as open formats, each at an address that is its content's digest.

A published list is one JSON document in its canonical form (RFC 8785); its address is the SHA-256 of exactly those bytes,
so that whoever has the file can check it with any tool (``sha256sum``), and a change is another list at another address.
CSV, iCalendar and HTML are made of that document alone. The log keeps who stands in a list by identifier: where a name was
erased since, the bytes can no longer be made, and the list is gone instead of being another.
"""
