/** The constants of the model as plain fields, per minute where a rate is given per hour or day. */
export function lawsOf(constants: Record<string, number>) {
	const of = (name: string): number => {
		const value = constants[name];
		if (value === undefined) throw new Error(`no constant ${name}`);
		return value;
	};
	return {
		ambientMmHg: of("air.ambient"),
		freeFlow: of("pump.freeFlow"),
		maxDepthMmHg: of("pump.maxDepth"),
		drawdownLimitMin: of("pump.drawdownLimit"),
		lineL: of("line.volume"),
		capacityShare: of("foam.capacity"),
		retainedShare: of("foam.retained"),
		fillMlPerMin: of("fill.flow"),
		conductance: of("drain.conductance"),
		drainLimitMin: of("drain.limit"),
		drainFactor: of("drain.factor"),
		closedLimitMin: of("path.closedLimit"),
		stallLimitMin: of("fill.stallLimit"),
		soundLeak: of("leak.sound"),
		leakLimit: of("leak.limit"),
		leakDelayMin: of("leak.delay"),
		lowShare: of("depth.low"),
		lowDelayMin: of("depth.delay"),
		absentLimitMin: of("absent.limit"),
		outputLimitMl: of("output.limit"),
		outputWindowMin: of("output.window"),
		weepPerLeak: of("weep.perLeak"),
		dryBreachPerMin: of("breach.dry") / 60,
		wetScaleMin: of("breach.wetScale"),
		wetShape: of("breach.wetShape"),
		/** From here on the hazard of a wet seal is held; the model gives it no name. */
		wetHeldMin: 60,
		agePerMin: of("breach.age") / 1440,
		overfill: of("breach.overfill"),
		breachMedian: of("breach.sizeMedian"),
		breachSigma: of("breach.sizeSigma"),
		turn: {
			held: of("turn.held"),
			wet: of("turn.wet"),
			between: of("turn.between"),
		},
		turnJitterMin: of("turn.jitter"),
		transfer: {
			held: of("transfer.held"),
			wet: of("transfer.wet"),
			between: of("transfer.between"),
		},
		debrisPerDrain: of("debris.perDrain"),
		debrisDwellMin: of("debris.dwellScale"),
		debrisPerMin: of("debris.perDay") / 1440,
		debrisEveryMin: of("debris.every") * 60,
		clumpChance: of("clump.chance"),
		clumpMean: of("clump.mean"),
		kinkPerMin: of("kink.rate") / 60,
		kinkSuctionShare: of("kink.suctionShare"),
		patientCv: of("exudate.patientCv"),
		blockCv: of("exudate.blockCv"),
		blockCorrelation: of("exudate.correlation"),
		blockMin: of("exudate.block") * 60,
		handsCanisterMin: of("hands.canister"),
		handsSourceMin: of("hands.source"),
		handsKinkMin: of("hands.kink"),
		handsPortMin: of("hands.port"),
		handsPatchMin: of("hands.patch"),
		roundStopMin: of("hands.round"),
		changeMin: of("hands.change"),
		portOffMin: of("port.pumpOff"),
		roundCanisterShare: of("round.canisterAbove"),
		roundLeakLimit: of("round.leakAbove"),
		hangMin: of("source.hang") * 60,
		noticeShare: of("notice.canister"),
	};
}

export type Laws = ReturnType<typeof lawsOf>;
