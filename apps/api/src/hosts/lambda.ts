/** For AWS Lambda behind API Gateway (events of version 1 and 2), a function URL or a load balancer: the service, as the variables of the function say. */

import { type APIGatewayProxyResult, getConnInfo, handle, type LambdaEvent } from "hono/aws-lambda";
import { createService } from "../service/service.js";
import { publicConfig } from "../service/start.js";

const service = createService(publicConfig(process.env), {
  address: (c) => getConnInfo(c).remote.address ?? "",
});

export const handler: (event: LambdaEvent) => Promise<APIGatewayProxyResult> = handle(service);
