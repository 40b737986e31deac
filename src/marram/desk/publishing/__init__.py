"""Lists made public: starting times and results at permanent addresses, for everybody, in open formats."""
