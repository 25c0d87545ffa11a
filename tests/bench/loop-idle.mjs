// Does nothing, for as long as whoever started it is there.
process.on('disconnect', () => process.exit());
